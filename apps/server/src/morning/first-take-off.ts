import { epochMinutes, instantOf } from '@drumline/units';
import type { Board } from '../flights/board/board.service.js';
import type { MorningAnswer } from './morning-answer.js';

type Flight = Pick<Board['flights'][number], 'id' | 'date' | 'departs' | 'aircraft' | 'state'>;

const notGiven: readonly Flight['state'][] = ['offered', 'approved'];
const given: readonly Flight['state'][] = ['given', 'loaded'];

/**
 * The next flight of today; one that is past its hour and was not given yet is late and comes first. A crew that was told to go
 * and should be off is asked about elsewhere. Null: none is still to come.
 */
export const firstTakeOff = ({
  flights,
  scenario: { asOf, firstDay, timeZone },
}: {
  readonly flights: readonly Flight[];
  readonly scenario: Pick<Board['scenario'], 'asOf' | 'firstDay' | 'timeZone'>;
}): MorningAnswer['firstTakeOff'] => {
  const lateMinutes = ({ departs }: Flight) =>
    Math.max(0, epochMinutes(asOf) - epochMinutes(instantOf(firstDay, departs, timeZone)));
  const isToCome = (flight: Flight) =>
    notGiven.includes(flight.state) || (given.includes(flight.state) && lateMinutes(flight) === 0);
  const [first] = flights
    .filter((flight) => flight.date === firstDay && isToCome(flight))
    .toSorted((one, other) => (one.departs < other.departs ? -1 : 1));
  if (first === undefined) return null;
  const { id, departs, aircraft } = first;
  return { at: departs, flight: id, aircraft, lateMinutes: lateMinutes(first) };
};
