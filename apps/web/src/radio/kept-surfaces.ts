import { isWaiting, type KeptLine, useLines } from '../paper/kept-lines.js';
import type { SaidSurface } from './read-line.js';

export interface KeptSurfaceReport {
  readonly report: SaidSurface;
  /** Base has read it and says no. */
  readonly isRefused: boolean;
}

/** What was said of a strip and waits on this machine: the latest of each place, by its code. */
export const useKeptSurfaces = (): ReadonlyMap<string, KeptSurfaceReport> => keptSurfaces(useLines());

export const keptSurfaces = (lines: readonly KeptLine[]): ReadonlyMap<string, KeptSurfaceReport> =>
  new Map(
    lines
      .filter(isWaiting)
      .flatMap(({ requests, answered, state }) =>
        requests
          .slice(answered)
          .filter(({ path }) => path.startsWith('/api/surface-reports/'))
          .map(({ body }) => ({ report: body as SaidSurface, isRefused: state === 'asks' })),
      )
      .toSorted(({ report: one }, { report: other }) => Date.parse(one.at) - Date.parse(other.at))
      .map((kept) => [kept.report.place, kept] as const),
  );
