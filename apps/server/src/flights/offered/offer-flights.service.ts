import {
  checkFlights,
  type Fault,
  type FlightPlan,
  isPlannersNumber,
  nextState,
  type PlannedFlight,
  replanFreedom,
} from '@drumline/planning';
import { Injectable } from '@nestjs/common';
import { type EntityManager, In } from 'typeorm';
import type { Account } from '../../people/account.table.js';
import type { Board } from '../board/board.service.js';
import { loadsOf } from '../office/flight-acts.service.js';
import { type Flight, type Load, loadTable } from '../store/flight.table.js';
import { FlightStoreService } from '../store/flight-store.service.js';
import { assignDrums } from './assign-drums.js';
import { type Offer, sortOffer } from './sort-offer.js';

/** A plan as it was made, and the revisions of the flights that it knew. */
export interface OfferedPlan {
  readonly id: string;
  readonly plan: FlightPlan;
  readonly flightRevisions: Readonly<Record<string, number>>;
  /** Offered flights that the run left as they were. */
  readonly frozen: readonly string[];
}

export interface Offered {
  readonly kind: 'offered';
  /** Number in the plan and number of the flight. */
  readonly flights: readonly { readonly planned: string; readonly flight: string }[];
  readonly calledOff: readonly string[];
}

export type OfferAnswer = Offered | { readonly kind: 'refused'; readonly faults: readonly Fault[] };

/** Puts the flights of an accepted plan before the dispatcher, in the place of those that were offered before. */
@Injectable()
export class OfferFlightsService {
  constructor(private readonly store: FlightStoreService) {}

  /** Inside a turn that has begun. Nothing is written where today's facts do not allow the plan. */
  async offer(
    board: Board,
    transaction: EntityManager,
    offered: OfferedPlan,
    by: Account,
  ): Promise<OfferAnswer> {
    const unknown = Object.fromEntries(board.flights.map(({ id }) => [id, 0]));
    const changed = await this.store.changedSince(transaction, { ...unknown, ...offered.flightRevisions });
    const offer = sortOffer(board, offered, changed);
    const faults = [...offer.faults, ...faultsToday(board, offer)];
    if (faults.length > 0) return { kind: 'refused', faults };
    for (const flight of offer.replaced) await this.callOff(board, transaction, flight, by);
    const numbers = await this.numbered(transaction, offer.planned);
    const loads = namedDrums(board, offer, numbers);
    const wanted = offer.planned
      .map((planned) => ({ ...planned, id: numbers.get(planned.id) ?? planned.id }))
      .map((planned) => ({ planned, loads: loads.get(planned.id) ?? [] }));
    const written = wanted.filter((each) => !stands(board, each.planned, each.loads));
    // Drums pass from one flight to another: all are set free before any is named.
    const ids = written.map(({ planned }) => planned.id);
    if (ids.length > 0) await transaction.delete(loadTable, { flightId: In(ids) });
    for (const each of written) await this.write(board, transaction, each, offered.id, by);
    return {
      kind: 'offered',
      flights: offer.planned.map(({ id }) => ({ planned: id, flight: numbers.get(id) ?? id })),
      calledOff: offer.replaced.map(({ id }) => id),
    };
  }

  private async callOff(board: Board, transaction: EntityManager, flight: Flight, by: Account) {
    const reason = 'not in the plan that takes its place';
    const planner = { name: by.fullName, role: 'planner' as const };
    const answer = nextState(flight, { act: 'call off', by: planner, reason, met: [] });
    if (answer.kind === 'refused') throw new Error(answer.words);
    const { state, version, needsDecision } = answer.flight;
    const stamp = { act: 'call off', by, at: board.now, reason };
    await this.store.write(transaction, { ...flight, state, version, needsDecision }, [], stamp);
  }

  private async numbered(
    transaction: EntityManager,
    planned: readonly PlannedFlight[],
  ): Promise<ReadonlyMap<string, string>> {
    const numbers = new Map<string, string>();
    for (const { id } of planned.filter(isNew)) {
      const rows: { number: string }[] = await transaction.query(
        `select nextval('flight_numbers') as number`,
      );
      numbers.set(id, `F${String(rows[0]?.number).padStart(3, '0')}`);
    }
    return numbers;
  }

  private async write(
    board: Board,
    transaction: EntityManager,
    { planned, loads }: { readonly planned: PlannedFlight; readonly loads: readonly Load[] },
    planId: string,
    by: Account,
  ): Promise<void> {
    const there = board.flights.find(({ id }) => id === planned.id);
    const again = there !== undefined && replanFreedom(there.state) === 'free';
    const flight = {
      ...bare(planned),
      planId,
      state: 'offered' as const,
      version: there === undefined ? 1 : there.version + 1,
      needsDecision: null,
      heldInPlace: false,
    };
    const act = again ? 'replan' : 'offer';
    await this.store.write(transaction, flight, loads, { act, by, at: board.now, reason: null });
  }
}

/** Flights that the planner numbered itself; the others keep the number they have. */
const isNew = ({ id, kind }: PlannedFlight): boolean => kind === 'positioning' && isPlannersNumber(id);

const bare = (planned: PlannedFlight) => {
  const { id, kind, date, departs, aircraft, pilot, from, to, stops } = planned;
  const drums = stops
    .filter((stop) => stop.drums > 0)
    .map((stop) => ({ place: stop.place, drums: stop.drums }));
  return { id, kind, date, departs, aircraft, pilot, fromPlace: from, toPlace: to, stops: drums, planned };
};

/** What the checker says today of the settled flights and the plan's together, settled faults left out. */
const faultsToday = (board: Board, { kept, planned }: Offer): readonly Fault[] => {
  const { scenario } = board;
  const fixed = new Set(kept.map(({ id }) => id));
  const standing = kept.flatMap((flight) => board.standingOf(flight) ?? []);
  const offered = planned.map((flight) => {
    const { fromPlace: from, toPlace: to, pilot, planned: _, kind: __, ...rest } = bare(flight);
    return { ...rest, from, to, state: 'offered' as const, ...(pilot === null ? {} : { pilot }) };
  });
  return checkFlights(scenario, [...standing, ...offered]).filter(
    ({ flights }) => flights.length === 0 || !flights.every((id) => fixed.has(id)),
  );
};

/** Drums by number for every flight of the plan; what a flight has already it keeps. */
const namedDrums = (board: Board, { kept, planned }: Offer, numbers: ReadonlyMap<string, string>) => {
  const settled = new Set(kept.map(({ id }) => id));
  const taken = [...board.takenBy].filter(([, flightId]) => settled.has(flightId)).map(([drum]) => drum);
  const scenario = { ...board.scenario, flights: planned.map((flight) => asBoardFlight(flight)) };
  const requests = planned.map((flight) => ({
    ...bare(flight),
    id: numbers.get(flight.id) ?? flight.id,
    stops: bare(flight).stops.map((stop) => ({ ...stop, numbers: [] })),
  }));
  return assignDrums(scenario, requests, new Set(taken));
};

const asBoardFlight = (flight: PlannedFlight) => {
  const { id, date, aircraft, fromPlace: from, toPlace: to, stops } = bare(flight);
  return { id, state: 'offered' as const, date, aircraft, from, to, stops };
};

/** Offered already, just so. */
const stands = (board: Board, planned: PlannedFlight, loads: readonly Load[]): boolean => {
  const there = board.flights.find(({ id }) => id === planned.id);
  if (there === undefined || replanFreedom(there.state) !== 'free') return false;
  const before = loadsOf(board, there);
  const next = bare(planned);
  const words = ({ date, departs, aircraft, pilot, stops }: typeof next | Flight): string =>
    JSON.stringify([date, departs, aircraft, pilot, stops.map(({ place, drums }) => [place, drums])]);
  const drums = (list: readonly Load[]): string => list.map(({ place, drum }) => `${place} ${drum}`).join();
  return words(there) === words(next) && drums(loads) === drums(before);
};
