import type { CrewSaid, LoadAnswer } from '@drumline/contract';
import { configurationOf, preparationList } from '@drumline/loading';
import { crewOfFlight } from '@drumline/planning';
import { instantAt, type Minutes } from '@drumline/units';
import { asStanding, type Board } from '../board/board.service.js';
import { freeDrums } from '../offered/free-drums.js';
import type { Flight, Load } from '../store/flight.table.js';
import { insteadOfHeld } from './instead-of-held.js';
import { loadPicture } from './load-picture.js';
import { type NamedFlight, namedFlight } from './named-flight.js';
import { plannedPicture } from './planned-picture.js';
import { type FlightOnPaper, requestFor } from './sheet-for.js';

interface OnBoard {
  readonly board: Board;
  readonly flight: FlightOnPaper;
  readonly loads: readonly Load[];
}

/** One flight as it is loaded, by the facts of now. */
export const loadAnswer = (
  { board, flight, loads }: OnBoard,
  crewsSaid: readonly CrewSaid[],
): Omit<LoadAnswer, 'loadings'> => {
  const { scenario } = board;
  const named = namedFlight(board, flight, loads);
  const standing = asStanding(flight);
  return {
    ...headOf(flight),
    asOf: scenario.asOf,
    ...typeAndCabin(board, flight, named),
    load: named.found ? loadPicture(requestFor(board, flight, named.load)) : null,
    why: named.found ? null : named.why,
    planned: named.found ? null : plannedPicture(board, flight),
    toFill: loads.filter(({ drum }) => drum === null).length,
    nextOldest: flight.stops.map(({ place }) => ({ place, drum: nextOldest(board, flight, place) })),
    insteadOfHeld: insteadOfHeld(board, flight, loads),
    asPlanned: flight.planned.stops.map(({ unloadOrStay }) => unloadOrStay),
    planningKg: scenario.policy.drum.grossKg,
    crew: standing === null || flight.date < scenario.firstDay ? [] : crewOfFlight(scenario, standing),
    stops: flight.stops.map(({ place }, stop) => ({
      place,
      drums: loads.flatMap((load) => (load.stop === stop && load.drum !== null ? [load.drum] : [])),
    })),
    reported: scenario.surfaceReports
      .filter(({ place }) => flight.stops.some((stop) => stop.place === place) || place === flight.fromPlace)
      .toSorted((one, other) => (one.at < other.at ? 1 : -1))
      .slice(0, 8),
    crewsSaid,
    toleranceLb: scenario.policy.twoTotals?.toleranceLb ?? null,
  };
};

const headOf = (flight: Flight) => {
  const { id, kind, state, version, revision, needsDecision, date, departs, aircraft, pilot } = flight;
  const { fromPlace, stops, toPlace, planned, lastAct, changedAt, changedByName } = flight;
  const legs = planned.legs.map(({ to }) => to);
  const route =
    legs.length > 0 ? [fromPlace, ...legs] : [fromPlace, ...stops.map(({ place }) => place), toPlace];
  return {
    ...{ id, kind, state, version, revision, needsDecision, date, departs, aircraft, pilot, route, lastAct },
    changedAt: instantAt(Math.floor(changedAt.getTime() / 60_000) as Minutes),
    changedByName,
  };
};

const typeAndCabin = ({ scenario }: Board, { aircraft, id }: Flight, named: NamedFlight) => {
  const { type: typeId } = scenario.aircraft.find(({ tail }) => tail === aircraft)!;
  const type = scenario.aircraftTypes.find((each) => each.id === typeId)!;
  const booked = scenario.bookedFlights.find((each) => each.id === id);
  const { id: configuration } = configurationOf(type, booked?.configuration ?? type.drumConfiguration);
  const { note = null, maxZeroFuelLb, envelope } = type;
  return {
    type: { id: typeId, note, maxZeroFuelLb, envelope },
    cabin: named.found ? preparationList(type, configuration, named.load.route, scenario.policy.drum) : null,
  };
};

/** The oldest drum that would be fit there and that no flight has, this one included. */
const nextOldest = (board: Board, flight: Flight, place: string) => {
  const [oldest] = freeDrums(board, flight, { place, atMost: 1 });
  const drum = board.scenario.drums.find(({ number }) => number === oldest);
  return drum === undefined ? null : { number: drum.number, batch: drum.batch, kg: drum.grossKg };
};
