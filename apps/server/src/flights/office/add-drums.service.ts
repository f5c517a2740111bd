import type { AddDrums, AddDrumsAnswer } from '@drumline/contract';
import { passengersAndDrums } from '@drumline/loading';
import {
  approvalsOnFile,
  type BookedFlight,
  bookedSpares,
  checkFlights,
  describeFlights,
  type Fault,
  type Scenario,
  type StandingFlight,
} from '@drumline/planning';
import { Injectable } from '@nestjs/common';
import { Problem } from '../../http/problem.js';
import type { Account } from '../../people/account.table.js';
import { type Board, BoardService } from '../board/board.service.js';
import { assignDrums } from '../offered/assign-drums.js';
import { FlightStoreService } from '../store/flight-store.service.js';
import { asFieldFault, faultWords } from './check-flight.js';
import { breaks, type WithLoads } from './flight-acts.service.js';

/** Drums that a person puts on a flight that flies anyway. */
@Injectable()
export class AddDrumsService {
  constructor(
    private readonly board: BoardService,
    private readonly store: FlightStoreService,
  ) {}

  /** What stands in the way, and which flights could take drums instead; nothing is changed. */
  async check(id: string, wanted: AddDrums): Promise<AddDrumsAnswer> {
    const board = await this.board.read();
    const booked = { ...bookedOf(board, id), ...(wanted.approval ? { approval: wanted.approval } : {}) };
    const scenario = withBooked(board.scenario, booked);
    return {
      faults: faultsOf(scenario, booked, wanted).map(asFieldFault),
      instead: insteadOf(board.scenario, id),
    };
  }

  /** Offered with the oldest fit drums; by the approval that the booked flight cites, where it carries passengers. */
  add(id: string, wanted: AddDrums, by: Account): Promise<WithLoads> {
    return this.board.change(async (board, transaction) => {
      const booked = bookedOf(board, id);
      const faults = faultsOf(board.scenario, booked, wanted);
      if (faults.length > 0) throw breaks({ id }, 'add drums', faults);
      const standing = standingOf(booked, wanted);
      const { flights } = describeFlights(board.scenario, [...board.scenario.flights, standing], 'operator');
      const planned = flights.find((flight) => flight.id === id)!;
      const before = board.flights.find((flight) => flight.id === id);
      const flight = {
        ...{ id, kind: planned.kind, date: booked.date, departs: planned.departs, aircraft: booked.aircraft },
        ...{ pilot: planned.pilot, fromPlace: standing.from, toPlace: standing.to, stops: standing.stops },
        ...{ planned, planId: null, state: 'offered' as const, needsDecision: null, heldInPlace: false },
        version: (before?.version ?? 0) + 1,
      };
      const request = { ...flight, stops: flight.stops.map((stop) => ({ ...stop, numbers: [] })) };
      const loads = assignDrums(board.scenario, [request], new Set(board.takenBy.keys())).get(id) ?? [];
      const stamp = { act: 'add drums', by, at: board.now, reason: null };
      return { flight: await this.store.write(transaction, flight, loads, stamp), loads, raised: null };
    });
  }
}

const bookedOf = ({ scenario, flights }: Board, id: string): BookedFlight => {
  const booked = scenario.bookedFlights.find((flight) => flight.id === id);
  if (booked === undefined) throw new Problem('not-found', `No booked flight ${id} is ahead.`);
  const carries = flights.find((flight) => flight.id === id);
  if (carries === undefined || carries.state === 'declined' || carries.state === 'called off') return booked;
  throw new Problem('conflict', `${id} carries drums already (${carries.state}): amend it.`);
};

const withBooked = (scenario: Scenario, booked: BookedFlight): Scenario => ({
  ...scenario,
  bookedFlights: scenario.bookedFlights.map((flight) => (flight.id === booked.id ? booked : flight)),
});

const standingOf = ({ id, date, aircraft, legs, departs }: BookedFlight, { place, drums }: AddDrums) =>
  ({
    id,
    state: 'offered',
    date,
    aircraft,
    from: legs[0]!.from,
    stops: [{ place, drums }],
    to: legs.at(-1)!.to,
    ...(departs === undefined ? {} : { departs }),
  }) satisfies StandingFlight;

const faultsOf = (scenario: Scenario, booked: BookedFlight, wanted: AddDrums): readonly Fault[] => {
  const off = booked.legs.findIndex(({ to }) => to === wanted.place);
  if (off < 0)
    return [
      {
        where: `${booked.id}, place`,
        what: `${booked.id} does not land at ${wanted.place}.`,
        mend: 'Name one of its landings.',
        flights: [booked.id],
      },
    ];
  const refused = passengerFaults(scenario, booked, wanted, off);
  if (refused.length > 0) return refused;
  const known = new Set(checkFlights(scenario, scenario.flights).map(faultWords));
  return checkFlights(scenario, [...scenario.flights, standingOf(booked, wanted)]).filter(
    (fault) => fault.flights.includes(booked.id) && !known.has(faultWords(fault)),
  );
};

/** The rule on every leg that the drums fly, with its document. */
const passengerFaults = (
  scenario: Scenario,
  { id, date, aircraft, legs, approval }: BookedFlight,
  { drums }: AddDrums,
  off: number,
): readonly Fault[] =>
  legs.slice(0, off + 1).flatMap(({ from, to, passengers }) => {
    const answer = passengersAndDrums(
      { from, to, date, aircraft, passengers, drums },
      scenario.policy.passengers,
      { number: approval ?? null, onFile: approvalsOnFile(scenario) },
    );
    if (answer.allowed) return [];
    const mend = 'Cite an approval that is on file, or take a leg without passengers.';
    return [{ where: `${id}, leg ${from}-${to}`, what: answer.words, mend, flights: [id] }];
  });

const insteadOf = (scenario: Scenario, not: string): AddDrumsAnswer['instead'] =>
  bookedSpares(scenario).flatMap(({ id, drums, to }) => {
    const flight = scenario.bookedFlights.find((each) => each.id === id);
    const carries = scenario.flights.some((each) => each.id === id);
    if (flight === undefined || to === null || drums === 0 || id === not || carries) return [];
    const { from } = flight.legs[0]!;
    const words = `${id} ${from}-${to}, ${drums} ${drums === 1 ? 'drum' : 'drums'}`;
    return [{ flight: id, date: flight.date, from, to, drums, words }];
  });
