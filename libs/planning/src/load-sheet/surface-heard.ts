import { knownSurface, latestReports, type Place } from '@drumline/network';
import { type IsoInstant, localDate, localTime } from '@drumline/units';
import type { Scenario } from '../scenario.js';

/** What has been heard of a place's surface: "dry 14 June 05:58"; "unknown" where no report is fresh any more. */
export function surfaceHeard({ surfaceReports, asOf, timeZone }: Scenario): (place: Place) => string {
  const known = knownSurface(surfaceReports, asOf, timeZone);
  const latest = latestReports(surfaceReports, asOf);
  return (place) => {
    const [state, report] = [known(place), latest.get(place.code)];
    return state === null || report === undefined ? 'unknown' : `${state} ${dayAndTime(report.at, timeZone)}`;
  };
}

/** "14 June 05:58", by the clock of the territory. */
const dayAndTime = (at: IsoInstant, timeZone: string): string =>
  `${dayOfMonth.format(new Date(localDate(at, timeZone)))} ${localTime(at, timeZone)}`;

const dayOfMonth = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'long', timeZone: 'UTC' });
