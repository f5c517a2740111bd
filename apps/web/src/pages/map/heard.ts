import { knownSurface, type SurfaceReport, type SurfaceState } from '@drumline/network';
import { hours } from '@drumline/units';
import type { Place, Report } from './map-read.js';

/** What is known of a surface, and the report it comes from. */
export interface Heard {
  readonly surface: SurfaceState | 'unknown';
  /** The last one, be it stale. */
  readonly report: Report | undefined;
}

interface Now {
  readonly at: Date;
  readonly timeZone: string;
}

/** Of each place: reports come with the last first. */
export const heardOf = (reports: readonly Report[], { at, timeZone }: Now): ((place: Place) => Heard) => {
  const known = knownSurface(reports as readonly SurfaceReport[], at.toISOString(), timeZone);
  return (place) => ({
    surface:
      known({
        ...place,
        surface: { ...place.surface, staleAfterHours: hours(place.surface.staleAfterHours) },
      }) ?? 'unknown',
    report: reports.find((report) => report.place === place.code),
  });
};
