import {
  addDays,
  epochMinutes,
  type IsoDate,
  type IsoInstant,
  instantAt,
  instantOf,
  localDate,
  minutes,
} from '@drumline/units';
import type { FlyingHours } from './flying-hours.js';
import { memo } from './memo.js';
import type { Place, SurfaceReport, SurfaceState } from './place.js';

type SurfacedPlace = Pick<Place, 'code' | 'surface'>;
type Morning = Pick<FlyingHours, 'timeZone' | 'firstDeparture'>;

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
  morning: Morning,
): ExpectedSurface => {
  const latest = latestReports(reports, asOf);
  const reported = memo((place: SurfacedPlace) => {
    const report = latest.get(place.code);
    return report && { state: report.state, ...daysCovered(report, place, morning) };
  });
  return (place, day) => {
    const report = reported(place);
    return report && covers(report, day) ? report.state : place.surface.expected;
  };
};

/**
 * What is known of the surface at a moment: the latest report until then, while no more than `staleAfterHours` have gone
 * by, or up to the end of its `untilDate`. Null: unknown, which is never taken for dry.
 */
export const knownSurface = (
  reports: readonly SurfaceReport[],
  at: IsoInstant,
  timeZone: string,
): ((place: SurfacedPlace) => SurfaceState | null) => {
  const latest = latestReports(reports, at);
  return ({ code, surface }) => {
    const report = latest.get(code);
    if (!report) return null;
    const isFresh = epochMinutes(at) - epochMinutes(report.at) <= surface.staleAfterHours * 60;
    const isForetold = report.untilDate !== undefined && localDate(at, timeZone) <= report.untilDate;
    return isFresh || isForetold ? report.state : null;
  };
};

/**
 * The report that stands at each place at a moment, by place: the latest until then by its own time, whenever it came in;
 * of two of one minute the later in the list.
 */
export const latestReports = (
  reports: readonly SurfaceReport[],
  asOf: IsoInstant,
): ReadonlyMap<string, SurfaceReport> => {
  const known = reports.filter(({ at }) => epochMinutes(at) <= epochMinutes(asOf));
  known.sort((a, b) => epochMinutes(a.at) - epochMinutes(b.at));
  return new Map(known.map((report) => [report.place, report]));
};

const daysCovered = (report: SurfaceReport, place: SurfacedPlace, morning: Morning) => ({
  ownDay: localDate(report.at, morning.timeZone),
  lastDay: report.untilDate ?? lastFreshDay(report, place, morning),
});

const covers = ({ ownDay, lastDay }: ReturnType<typeof daysCovered>, day: IsoDate): boolean =>
  day === ownDay || (ownDay < day && day <= lastDay);

const lastFreshDay = ({ at }: SurfaceReport, place: SurfacedPlace, morning: Morning): IsoDate => {
  const stale = minutes(epochMinutes(at) + place.surface.staleAfterHours * 60);
  const day = localDate(instantAt(stale), morning.timeZone);
  const departure = epochMinutes(instantOf(day, morning.firstDeparture, morning.timeZone));
  return departure <= stale ? day : addDays(day, -1);
};
