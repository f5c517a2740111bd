import { leftToDo, type Scenario, type StandingFlight, standingState } from '@drumline/planning';
import type { Drum } from '@drumline/stock';
import { Injectable } from '@nestjs/common';
import { DataSource, type EntityManager } from 'typeorm';
import { Problem } from '../../http/problem.js';
import { type Facts, ScenariosService } from '../../scenarios/scenarios.service.js';
import { StockService } from '../../stock/stock.service.js';
import type { Horizon } from '../../territory/territory.service.js';
import type { Flight, Load } from '../store/flight.table.js';
import { FlightStoreService } from '../store/flight-store.service.js';
import { takeFlightTurn } from '../store/flight-turn.js';
import { FlightDrumsService } from './flight-drums.service.js';
import { type Flown, flownBy, isUnderWay } from './flown.js';
import { stopsLanded } from './held-drums.js';
import { asTaken, takenFromBase, withOpeningDrums } from './opening-drums.js';

export { plannedUse } from '../office/planned-use.js';

/** Everything that an act on flights is judged by, at one moment. */
export interface Board {
  /** The territory today with every flight that stands from today on. */
  readonly scenario: Scenario;
  /** The territory with every drum where it is now, without the flights. */
  readonly facts: Facts;
  readonly flights: readonly Flight[];
  readonly loads: readonly Load[];
  /** Drums that are spoken for, with the flight: set aside, or taken by a flight that is under way. */
  readonly takenBy: ReadonlyMap<string, string>;
  /** Aboard flights that land them nowhere, as they were taken: they have a place on its sheet, and stand at none. */
  readonly ridingHome: readonly Drum[];
  /** A flight as the plan counts it: one that is under way with what it lands in the end. Null: it is no part of it. */
  readonly standingOf: (flight: Flight) => StandingFlight | null;
  /** By the territory's clock. */
  readonly now: Date;
}

@Injectable()
export class BoardService {
  constructor(
    private readonly database: DataSource,
    private readonly scenarios: ScenariosService,
    private readonly stock: StockService,
    private readonly store: FlightStoreService,
    private readonly drums: FlightDrumsService,
  ) {}

  async read(horizon: Horizon = {}): Promise<Board> {
    return this.boardOn(await this.scenarios.facts(horizon), this.database.manager);
  }

  /**
   * Acts on flights take turns over the whole territory, and each is judged by the flights as the one before left
   * them: of forty that together overfill a cache, those that fit get through. The territory itself is read before
   * the turn comes, so that a transaction never waits for a second connection.
   */
  async change<T>(act: (board: Board, transaction: EntityManager) => Promise<T>): Promise<T> {
    const facts = await this.scenarios.facts();
    return this.database.transaction(async (transaction) => {
      await takeFlightTurn(transaction);
      return act(await this.boardOn(facts, transaction), transaction);
    });
  }

  private async boardOn(facts: Facts, transaction: EntityManager): Promise<Board> {
    const { scenario: now, done } = facts;
    const flights = await this.store.since(transaction, now.firstDay);
    const loads = await this.store.loads(transaction);
    refuseUnknownNames(now, flights);
    const flown = await this.flownOn(transaction, flights, loads);
    const held = await this.heldOf(transaction, loads, flown);
    const standingOf = (flight: Flight) => {
      const own = loads.filter(({ flightId }) => flightId === flight.id);
      return asStanding({
        ...flight,
        stops: stopsLanded(flight.stops, { loads: own, flown: flown.get(flight.id) }, held),
      });
    };
    const standing = flights.flatMap((flight) => standingOf(flight) ?? []);
    const aboard = await this.stock.aboard(transaction, setAsideElsewhere(now, loads));
    const taken = new Map([...takenFromBase(flown), ...fromPlaces(flights, loads, aboard)]);
    const riding = aboardBesides(flown, loads, new Set([...taken.keys(), ...numbersOf(now)]));
    const drums = await this.stock.drumsByNumber(transaction, [...taken.keys(), ...riding.keys()]);
    // Drums that are put back full are drawn again by the programme.
    const drawn = done.drawn.filter(({ drum }) => !taken.has(drum));
    const programme = leftToDo(now, { ...done, drawn });
    const scenario = withOpeningDrums({ ...programme, flights: standing }, taken, drums);
    const takenBy = spokenFor(loads, taken);
    const ridingHome = asTaken(now, riding, drums);
    return { scenario, facts, flights, loads, takenBy, ridingHome, standingOf, now: new Date(now.asOf) };
  }

  /** Of the drums that flights have set aside, carry or have set down: those on hold. */
  private async heldOf(
    transaction: EntityManager,
    loads: readonly Load[],
    flown: ReadonlyMap<string, Flown>,
  ): Promise<ReadonlySet<string>> {
    const named = [...loads, ...[...flown.values()].flatMap(({ drums }) => drums)].flatMap(
      ({ drum }) => drum ?? [],
    );
    return new Set((await this.stock.held(transaction, named)).map(({ number }) => number));
  }

  /** Of every flight that is under way: by its state, or as the ledger has drums of it off before anybody reported it off. */
  private async flownOn(
    transaction: EntityManager,
    flights: readonly Flight[],
    loads: readonly Load[],
  ): Promise<ReadonlyMap<string, Flown>> {
    const flying = flights.filter((flight) => isUnderWay(flight) || flight.state === 'given');
    if (flying.length === 0) return new Map();
    const numbers = new Set(loads.flatMap(({ drum }) => drum ?? []));
    const ids = flying.map(({ id }) => id);
    const moved = await this.drums.moved(transaction, ids, numbers);
    return new Map(
      flying.flatMap((flight) => {
        const drums = moved.get(flight.id) ?? [];
        if (!isUnderWay(flight) && drums.every(({ off }) => off === null)) return [];
        const own = loads.filter(({ flightId }) => flightId === flight.id);
        return [[flight.id, flownBy(flight, own, drums)] as const];
      }),
    );
  }
}

/** Set aside for a flight that nobody has reported off, and standing at no place. */
const setAsideElsewhere = (now: Scenario, loads: readonly Load[]): readonly string[] => {
  const standing = numbersOf(now);
  return loads.flatMap(({ drum, settled }) => (drum === null || settled || standing.has(drum) ? [] : [drum]));
};

const numbersOf = ({ drums }: Scenario): ReadonlySet<string> => new Set(drums.map(({ number }) => number));

/** On the load of a flight under way and not among these, with its base. */
const aboardBesides = (
  flown: ReadonlyMap<string, Flown>,
  loads: readonly Load[],
  known: ReadonlySet<string>,
): ReadonlyMap<string, string> =>
  new Map(
    loads.flatMap(({ drum, flightId }) => {
      const base = flown.get(flightId)?.fromPlace;
      return drum === null || base === undefined || known.has(drum) ? [] : [[drum, base] as const];
    }),
  );

const fromPlaces = (flights: readonly Flight[], loads: readonly Load[], drums: readonly string[]) =>
  drums.flatMap((number) => {
    const load = loads.find(({ drum }) => drum === number);
    const flight = flights.find(({ id }) => id === load?.flightId);
    return flight === undefined ? [] : [[number, flight.fromPlace] as const];
  });

const spokenFor = (loads: readonly Load[], taken: ReadonlyMap<string, string>): ReadonlyMap<string, string> =>
  new Map(
    loads.flatMap(({ drum, flightId, settled }) =>
      drum !== null && (!settled || taken.has(drum)) ? [[drum, flightId] as const] : [],
    ),
  );

/** A flight outlives what it names only by a mistake in the territory; the planner could not read it. */
const refuseUnknownNames = (facts: Scenario, flights: readonly Flight[]): void => {
  const tails = new Set(facts.aircraft.map(({ tail }) => tail));
  const codes = new Set(facts.places.map(({ code }) => code));
  const crews = new Set(facts.pilots.map(({ id }) => id));
  const faults = flights.flatMap(({ id, aircraft, fromPlace, toPlace, stops, pilot }) => {
    const gone = [
      ...(tails.has(aircraft) ? [] : [`aircraft ${aircraft}`]),
      ...[fromPlace, toPlace, ...stops.map(({ place }) => place)]
        .filter((code) => !codes.has(code))
        .map((code) => `place ${code}`),
      ...(pilot === null || crews.has(pilot) ? [] : [`pilot ${pilot}`]),
    ];
    return gone.map((name) => ({
      path: `flights.${id}`,
      problem: `it names ${name}, which is no longer in the territory.`,
      remedy: `Put ${name} back, and call the flight off or amend it.`,
    }));
  });
  if (faults.length > 0)
    throw new Problem('conflict', 'Flights and territory do not fit: see faults.', faults);
};

/** A flight as a scenario lists it; null: it is no part of a plan. */
export const asStanding = (
  flight: Omit<Flight, 'departs' | 'stops'> &
    Pick<StandingFlight, 'stops'> & { readonly departs: Flight['departs'] | null },
): StandingFlight | null => {
  const state = standingState(flight.state);
  if (state === null) return null;
  const { id, date, departs, aircraft, pilot, fromPlace, toPlace, stops } = flight;
  return {
    id,
    state,
    date,
    aircraft,
    from: fromPlace,
    stops,
    to: toPlace,
    ...(departs === null ? {} : { departs }),
    ...(pilot === null ? {} : { pilot }),
  };
};
