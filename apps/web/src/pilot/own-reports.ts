import type { FlightReportBody, MovementBody } from '@drumline/contract';
import type { SurfaceReport } from '@drumline/network';
import type { ShownEntry } from '../phone/index.js';

export type Condition = 'sound' | 'damaged' | 'leaking' | 'seal broken';

export interface ReportedDrum {
  readonly drum: string;
  readonly kind: 'left at' | 'brought home';
  readonly place: string;
  readonly condition: Condition;
  readonly at: string;
}

/** What this phone has reported of one flight, with base or not. */
export interface OwnReports {
  readonly loadedVersion: number | null;
  readonly offAt: string | null;
  readonly downAt: string | null;
  readonly refusedAt: string | null;
  readonly drums: readonly ReportedDrum[];
}

type Body = FlightReportBody | MovementBody;

/** Read from the entries as they were kept; what base has asked back about counts as said all the same. */
export const ownReports = (entries: readonly ShownEntry[], flight: string): OwnReports => {
  const bodies = entries
    .filter((entry) => entry.flight === flight)
    .toReversed()
    .flatMap(({ requests }) => requests.map(({ body }) => body as Body));
  const last = <K extends Body['kind']>(kind: K) =>
    bodies.findLast((body): body is Extract<Body, { kind: K }> => body.kind === kind);
  const land = last('land') ?? last('turn back') ?? last('end elsewhere');
  return {
    loadedVersion: last('load')?.version ?? null,
    offAt: last('take off')?.happenedAt ?? null,
    downAt: land?.happenedAt ?? null,
    refusedAt: last('refuse')?.happenedAt ?? null,
    drums: bodies.flatMap((body) =>
      body.kind === 'left at' || body.kind === 'brought home'
        ? [
            {
              drum: body.drum,
              kind: body.kind,
              place: body.place,
              condition: body.condition,
              at: body.happenedAt,
            },
          ]
        : [],
    ),
  };
};

/** Drums that this phone has put on hold: it says so at once, whether base has heard or not. */
export const heldHere = (entries: readonly ShownEntry[]): ReadonlySet<string> =>
  new Set(
    entries.flatMap(({ requests }) =>
      requests.flatMap(({ body }) => {
        const report = body as Body;
        return 'condition' in report && report.condition !== 'sound' ? [report.drum] : [];
      }),
    ),
  );

/** Surfaces as base knows them and as this phone has seen them; the newest of each place. */
export const surfacesKnown = (
  byBase: readonly SurfaceReport[],
  entries: readonly ShownEntry[],
): readonly SurfaceReport[] => {
  const own = entries.flatMap(({ requests }) =>
    requests.flatMap(({ path, body }) =>
      path.startsWith('/api/surface-reports/') ? [body as unknown as SurfaceReport] : [],
    ),
  );
  const ordered = [...byBase, ...own].sort((one, other) => Date.parse(one.at) - Date.parse(other.at));
  return [...new Map(ordered.map((report) => [report.place, report])).values()];
};
