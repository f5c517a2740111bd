import { knownSurface, latestReports, type SurfaceReport, type SurfaceState } from '@drumline/network';
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

/** Of each place; reports come with the last received first. */
export const heardOf = (reports: readonly Report[], { at, timeZone }: Now): ((place: Place) => Heard) => {
  const asReceived = (reports as readonly SurfaceReport[]).toReversed();
  const known = knownSurface(asReceived, at.toISOString(), timeZone);
  const latest = latestReports(asReceived, at.toISOString());
  return (place) => ({
    surface:
      known({
        ...place,
        surface: { ...place.surface, staleAfterHours: hours(place.surface.staleAfterHours) },
      }) ?? 'unknown',
    report: latest.get(place.code),
  });
};
