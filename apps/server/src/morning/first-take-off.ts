import { epochMinutes, instantOf } from '@drumline/units';
import type { Board } from '../flights/board/board.service.js';
import type { MorningAnswer } from './morning-answer.js';

const yetToLeave: readonly Board['flights'][number]['state'][] = ['offered', 'approved', 'given', 'loaded'];

/** The next flight of today; one that should be off already is asked about elsewhere. Null: none is still to come. */
export const firstTakeOff = ({
  flights,
  scenario: { asOf, firstDay, timeZone },
}: {
  readonly flights: readonly Pick<
    Board['flights'][number],
    'id' | 'date' | 'departs' | 'aircraft' | 'state'
  >[];
  readonly scenario: Pick<Board['scenario'], 'asOf' | 'firstDay' | 'timeZone'>;
}): MorningAnswer['firstTakeOff'] => {
  const isToCome = (departs: Board['flights'][number]['departs']) =>
    epochMinutes(instantOf(firstDay, departs, timeZone)) >= epochMinutes(asOf);
  const [first] = flights
    .filter(
      ({ date, state, departs }) => date === firstDay && yetToLeave.includes(state) && isToCome(departs),
    )
    .toSorted((one, other) => (one.departs < other.departs ? -1 : 1));
  return first === undefined ? null : { at: first.departs, flight: first.id, aircraft: first.aircraft };
};
