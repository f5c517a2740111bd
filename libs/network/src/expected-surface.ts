import { epochMinutes, type IsoDate, type IsoInstant, instantOf, localDate } from '@drumline/units';
import type { FlyingHours } from './flying-hours.js';
import type { Place, SurfaceReport, SurfaceState } from './place.js';

type SurfacedPlace = Pick<Place, 'code' | 'surface'>;

/** What the planner expects of the surface at a place on a day. */
export type ExpectedSurface = (place: SurfacedPlace, day: IsoDate) => SurfaceState;

/**
 * Expected surface by place and day: the latest report known at `asOf`, on the days it covers; else the place's
 * expected state. A report covers its own day, the days up to its `untilDate` if it has one, and otherwise the days
 * whose first departure comes no later than `staleAfterHours` after it.
 */
export const expectedSurface = (
  reports: readonly SurfaceReport[],
  asOf: IsoInstant,
  hours: Pick<FlyingHours, 'timeZone' | 'firstDeparture'>,
): ExpectedSurface => {
  const latest = latestByPlace(reports, asOf);
  return (place, day) => {
    const report = latest.get(place.code);
    return report && covers(report, place, day, hours) ? report.state : place.surface.expected;
  };
};

const latestByPlace = (reports: readonly SurfaceReport[], asOf: IsoInstant): Map<string, SurfaceReport> => {
  const known = reports.filter(({ at }) => epochMinutes(at) <= epochMinutes(asOf));
  known.sort((a, b) => epochMinutes(a.at) - epochMinutes(b.at));
  return new Map(known.map((report) => [report.place, report]));
};

const covers = (
  { at, untilDate }: SurfaceReport,
  place: SurfacedPlace,
  day: IsoDate,
  { timeZone, firstDeparture }: Pick<FlyingHours, 'timeZone' | 'firstDeparture'>,
): boolean => {
  const ownDay = localDate(at, timeZone);
  if (day <= ownDay) return day === ownDay;
  if (untilDate) return day <= untilDate;
  const departure = epochMinutes(instantOf(day, firstDeparture, timeZone));
  return departure <= epochMinutes(at) + place.surface.staleAfterHours * 60;
};
