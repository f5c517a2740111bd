import { epochMinutes, type IsoInstant, instantAt, instantOf, minutes } from '@drumline/units';
import type { AwayFlight } from '../flights/away/away-flights.service.js';
import type { Flight } from '../flights/store/flight.table.js';
import type { NotHeard } from './morning-answer.js';

type Silent = NotHeard['crews'][number];

interface Moment {
  readonly asOf: IsoInstant;
  readonly timeZone: string;
}

/** Crews of whom a word is due that has not come: not off, not back, drums not reported; the longest due first. */
export const crewsNotHeard = (
  flights: readonly Flight[],
  away: readonly AwayFlight[],
  moment: Moment,
): readonly Silent[] =>
  flights
    .flatMap((flight) => dueOf(flight, away, moment) ?? [])
    .filter(({ expectedAt }) => epochMinutes(expectedAt) <= epochMinutes(moment.asOf))
    .toSorted((one, other) => epochMinutes(one.expectedAt) - epochMinutes(other.expectedAt));

const dueOf = (flight: Flight, away: readonly AwayFlight[], { timeZone }: Moment): Silent | null => {
  const { id, pilot, state, date, departs, landedAt } = flight;
  const silent = (what: Silent['what'], expectedAt: IsoInstant): Silent => ({
    pilot,
    flight: id,
    state,
    expectedAt,
    what,
  });
  if (state === 'given') return silent('not loaded', instantOf(date, departs, timeZone));
  if (state === 'loaded') return silent('not off', instantOf(date, departs, timeZone));
  const back = away.find((each) => each.flight === id)?.expectedBackAt;
  if (state === 'away' && back !== undefined) return silent('not back', back);
  if (state === 'home' && landedAt !== null)
    return silent('drums not reported', instantAt(minutes(landedAt.getTime() / 60_000)));
  return null;
};
