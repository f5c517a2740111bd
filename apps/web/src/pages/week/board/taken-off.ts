import { inWords } from '../../../ui/qty.js';
import type { WeekBooked, WeekFlight } from '../week-read.js';

/** Drums that were on a booked flight and are so no more: it flies all the same, and stands on the board as booked, once. */
export const takenOffBooked = ({
  flights,
  booked,
}: {
  readonly flights: readonly WeekFlight[];
  readonly booked: readonly WeekBooked[];
}): ReadonlyMap<string, WeekFlight> => {
  const flying = new Set(booked.map(({ id }) => id));
  return new Map(
    flights
      .filter(({ id, state }) => flying.has(id) && (state === 'called off' || state === 'declined'))
      .map((flight) => [flight.id, flight]),
  );
};

/** "3 drums taken off". */
export const takenOffWords = ({ drums }: Pick<WeekFlight, 'drums'>): string =>
  `${inWords(drums, 'drums')} taken off`;

/** Of an accepted plan, what it undid: flights called off, and drums taken off flights that fly all the same. */
export const undoneWords = (calledOff: readonly string[], booked: ReadonlyMap<string, number>): string => {
  const flights = calledOff.filter((id) => !booked.has(id));
  const drums = calledOff.flatMap((id) => {
    const off = booked.get(id);
    return off === undefined ? [] : [`${inWords(off, 'drums')} taken off ${id}, which flies all the same`];
  });
  const said = [...(flights.length === 0 ? [] : [`Called off: ${flights.join(', ')}`]), ...drums];
  return said.map((words) => ` ${words}.`).join('');
};
