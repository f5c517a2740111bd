import type { Fault as FieldFault } from '@drumline/contract';
import {
  checkFlights,
  dayOverWords,
  type Fault,
  faultWords,
  type Scenario,
  type StandingFlight,
} from '@drumline/planning';
import { holdOn } from '@drumline/stock';
import { dateWords, localDate } from '@drumline/units';
import { asStanding, type Board } from '../board/board.service.js';
import type { Flight, Load } from '../store/flight.table.js';
import { plannedUse } from './planned-use.js';

/** A fault of the planner in the words of a problem document. */
export const asFieldFault = ({ where, what, mend }: Fault): FieldFault => ({
  path: where,
  problem: what,
  remedy: mend,
});

/** What stands in the way of flying it beside the flights that are settled already, by today's facts. */
export const faultsOfApproving = (board: Board, flight: Flight, loads: readonly Load[]): readonly Fault[] => {
  const settled = board.scenario.flights.filter(({ id, state }) => id !== flight.id && state !== 'offered');
  // Offered flights may take the same drums: one that is marked for it is not approved while the others stand.
  const isMarked = flight.state === 'offered' && flight.needsDecision !== null;
  const others = isMarked ? board.scenario.flights.filter(({ id }) => id !== flight.id) : settled;
  return [
    ...dayFaults(board.scenario, flight),
    ...checkFlights(board.scenario, [...others, ...standing(flight)]).filter(concerns(flight)),
    ...drumFaults(board, flight, loads),
  ];
};

/** `departs` null: at whatever time of its day aircraft and pilot are free. */
export type FlightAsked = Omit<Flight, 'departs'> & { readonly departs: Flight['departs'] | null };

/** What an amendment breaks that was not broken before it, among every flight that stands. */
export const faultsOfAmending = (
  board: Board,
  flight: FlightAsked,
  loads: readonly Load[],
): readonly Fault[] => {
  const { scenario } = board;
  const others = scenario.flights.filter(({ id }) => id !== flight.id);
  const known = new Set(checkFlights(scenario, scenario.flights).map(faultWords));
  const after = checkFlights(scenario, [...others, ...standing(flight)]).filter(concerns(flight));
  const isSettled = flight.state !== 'offered';
  return [
    ...dayFaults(scenario, flight),
    ...after.filter((fault) => isSettled || isOwn(flight, fault) || !known.has(faultWords(fault))),
    ...drumFaults(board, flight, loads),
  ];
};

/** What is wrong with a flight as it stands: a reason to look at it again. */
export const faultsOfStanding = (
  board: Board,
  checked: readonly Fault[],
  flight: Flight,
  loads: readonly Load[],
): readonly Fault[] => [
  ...dayFaults(board.scenario, flight),
  ...checked.filter(concerns(flight)),
  ...drumFaults(board, flight, loads),
];

const concerns =
  ({ id }: Pick<Flight, 'id'>) =>
  ({ flights }: Fault): boolean =>
    flights.includes(id);

const isOwn = ({ id }: Pick<Flight, 'id'>, { flights }: Fault): boolean =>
  flights.length === 1 && flights[0] === id;

const standing = (flight: FlightAsked): readonly StandingFlight[] => {
  const one = asStanding(flight);
  return one === null ? [] : [one];
};

/** The checker takes flights of days past for facts. */
export const dayFaults = (
  { asOf, timeZone }: Scenario,
  { id, date }: Pick<FlightAsked, 'id' | 'date'>,
): readonly Fault[] => {
  const today = localDate(asOf, timeZone);
  if (date >= today) return [];
  const what = dayOverWords(date, today);
  return [{ where: id, what, mend: 'Amend the day, or call the flight off.', flights: [id] }];
};

/** Named drums have to stand at the base, sealed, not held, in date when they are used, and on no other flight. */
export const drumFaults = (
  { scenario, flights, takenBy }: Board,
  flight: FlightAsked,
  loads: readonly Load[],
): readonly Fault[] => {
  const drums = new Map(scenario.drums.map((drum) => [drum.number, drum]));
  const batches = new Map(scenario.batches.map((batch) => [batch.id, batch]));
  const stateOf = (id: string) => flights.find((other) => other.id === id)?.state ?? 'standing';
  return loads.flatMap(({ drum: number, place }) => {
    if (number === null) return [];
    const fault = (what: string, mend: string): readonly Fault[] => [
      { where: `${flight.id}, drum ${number}`, what, mend, flights: [flight.id] },
    ];
    const other = takenBy.get(number);
    if (other !== undefined && other !== flight.id)
      return fault(`It is on ${other} (${stateOf(other)}).`, 'Take another drum.');
    const drum = drums.get(number);
    if (drum === undefined) return fault('No filled drum of that number stands anywhere.', takeOther);
    if (drum.place !== flight.fromPlace)
      return fault(`It stands at ${drum.place}, not at ${flight.fromPlace}.`, takeOther);
    if (drum.content !== 'filled sealed') return fault(`It is ${drum.content}.`, takeOther);
    const batch = batches.get(drum.batch);
    const held = holdOn(drum, scenario.batches);
    if (held !== undefined) return fault(`It is held: ${held.hold.reason}.`, takeOther);
    const use = plannedUse(scenario, place, flight.date);
    if (batch !== undefined && batch.retestDue < use)
      return fault(
        `It is in date until ${dateWords(batch.retestDue)}; its fuel is used by ${dateWords(use)}.`,
        takeOther,
      );
    return [];
  });
};

const takeOther = 'Amend the flight: without numbers the oldest fit drums are taken.';
