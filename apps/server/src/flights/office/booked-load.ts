import type { BookedLoadAnswer, BookedLoadQuery } from '@drumline/contract';
import {
  type BookedFlight,
  type BookedRoom,
  bookedRoom,
  type ForLanding,
  faultsOfAdding,
  flightCard,
  plannedLoadOfFlight,
  roomByRules,
  type Scenario,
  spareElsewhere,
  standingWith,
} from '@drumline/planning';
import type { Board } from '../board/board.service.js';
import { freeDrums } from '../offered/free-drums.js';
import { drawPlanned } from '../sheet/planned-picture.js';
import { bookedOf } from './booked-of.js';
import { asFieldFault } from './check-flight.js';
import { consequenceOf } from './consequence.js';

interface OnBoard {
  readonly board: Board;
  readonly booked: BookedFlight;
}

/** A flight that flies anyway: what it carries, which drums it could take beside it, and what follows from those asked. */
export const bookedLoad = (today: Board, id: string, asked: BookedLoadQuery): BookedLoadAnswer => {
  const booked = { ...bookedOf(today, id), ...(asked.approval ? { approval: asked.approval } : {}) };
  const on = { board: { ...today, scenario: withBooked(today.scenario, booked) }, booked };
  const room = bookedRoom(on.board.scenario, booked);
  const faultsOf = faultsOfAdding(on.board.scenario, booked);
  const { legs, landings } = roomByRules(on.board.scenario, booked, { room, faultsOf });
  const stop = stopAsked(booked, landings, asked);
  const faults = stop.drums === 0 ? [] : faultsOf(stop);
  return {
    asked: stop,
    ...pictureOf(on, landings, stop),
    planningKg: today.scenario.policy.drum.grossKg,
    notKnown: notKnown(booked, room),
    legs,
    landings,
    stand: standOf(on, stop),
    ...whatFollows(on, stop, faults.length > 0),
    faults: faults.map(asFieldFault),
    instead: spareElsewhere(today.scenario, id),
  };
};

const withBooked = (scenario: Scenario, booked: BookedFlight): Scenario => ({
  ...scenario,
  bookedFlights: scenario.bookedFlights.map((flight) => (flight.id === booked.id ? booked : flight)),
});

type Landing = BookedLoadAnswer['landings'][number];

/** What is asked; else as many as go where most go. */
const stopAsked = (
  { legs }: BookedFlight,
  landings: readonly Landing[],
  { place, drums }: BookedLoadQuery,
): ForLanding => {
  const [most] = landings.toSorted((one, other) => other.drums - one.drums);
  const where = place ?? most?.place ?? legs[0]!.to;
  return { place: where, drums: drums ?? landings.find((each) => each.place === where)?.drums ?? 0 };
};

/** With the drums that are asked; where so many stand nowhere aboard, with as many as may go. */
const pictureOf = (
  { board, booked }: OnBoard,
  landings: readonly Landing[],
  { place, drums }: ForLanding,
) => {
  const may = landings.find((each) => each.place === place)?.drums ?? 0;
  const tried = [drums, Math.min(drums, may), 0].map((count) => ({
    count,
    planned: plannedLoadOfFlight(board.scenario, standingWith(booked, { place, drums: count })),
  }));
  for (const { count, planned } of tried)
    if (planned.found)
      return { planned: drawPlanned(board, onSheet(board, booked), planned.load), drawn: count, why: null };
  const [{ planned: none }] = tried.slice(-1) as [(typeof tried)[number]];
  return { planned: null, drawn: 0, why: none.found ? null : `${booked.id}: ${none.why}.` };
};

const onSheet = ({ scenario }: Board, { id, aircraft, date, departs }: BookedFlight) => ({
  ...{ id, aircraft, date, pilot: null, version: 1, state: 'offered' as const },
  departs: departs ?? scenario.policy.flyingDay.firstDeparture,
});

const notKnown = ({ legs }: BookedFlight, room: BookedRoom | null): readonly string[] => [
  ...legs.flatMap(({ from, to, passengers, passengersKg }) =>
    passengers > 0 && passengersKg === 0
      ? [`${from}-${to}: nobody has entered what its passengers weigh; they are counted as 0 kg.`]
      : [],
  ),
  ...(room?.legs ?? []).flatMap(({ from, to, balanceUnknown }) =>
    balanceUnknown === null ? [] : [`${from}-${to}: ${balanceUnknown}.`],
  ),
];

const standOf = ({ board, booked }: OnBoard, { place, drums }: ForLanding): BookedLoadAnswer['stand'] => {
  const [first] = booked.legs;
  const { date, departs } = onSheet(board, booked);
  const free = freeDrums(
    board,
    { date, departs, fromPlace: first!.from },
    { place, atMost: board.scenario.drums.length },
  );
  const take = free.slice(0, drums);
  return { base: first!.from, free: free.length, take, toFill: drums - take.length };
};

/** Cost and levels with those drums; nothing where none fly. */
const whatFollows = (
  { board: { scenario }, booked }: OnBoard,
  stop: ForLanding,
  isRefused: boolean,
): Pick<BookedLoadAnswer, 'cost' | 'caches'> => {
  if (stop.drums === 0 || isRefused) return { cost: null, caches: [] };
  const withThem = { ...scenario, flights: [...scenario.flights, standingWith(booked, stop)] };
  return {
    cost: flightCard(withThem, booked.id)?.load.cost ?? null,
    caches: consequenceOf(withThem, booked.id).caches,
  };
};
