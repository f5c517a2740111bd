import type { RouteLoad, RouteRequest } from '@drumline/loading';
import type { SurfaceState } from '@drumline/network';
import type { Plan, PlanCost, Problem, Proof } from '@drumline/routing';
import type { IsoDate, Litres } from '@drumline/units';
import type { EndTarget, ShortLevel } from '../flight-plan.js';
import type { Aircraft, BookedFlight, Pilot, Scenario, StandingFlight } from '../scenario.js';

/** A scenario, the routing problem made of it, and the way back. */
export interface BuiltProblem {
  readonly scenario: Scenario;
  readonly endTarget: EndTarget;
  readonly problem: Problem;
  readonly map: ProblemMap;
}

/** What the indices of a problem stand for; every list runs parallel to the problem's list of the same name. */
export interface ProblemMap {
  readonly dates: readonly IsoDate[];
  readonly stores: readonly StoreEntry[];
  /** Index of a place's store; undefined: the place keeps no stock in this problem. */
  readonly storeOf: ReadonlyMap<string, number>;
  readonly vehicles: readonly Aircraft[];
  readonly crews: readonly Pilot[];
  readonly booked: readonly BookedEntry[];
  /** Offered flights of the standing plan, which may move at the change price. */
  readonly standing: readonly StandingFlight[];
  /** Constants: what they land, draw and hold is already in the problem. */
  readonly frozen: readonly FrozenEntry[];
  /** The loading rules for an empty-handed positioning flight on a day; remembered, so asking twice is free. */
  readonly loadOf: LoadOf;
  /** Expected surface by place and day. */
  readonly surfaceOf: (place: string, day: number) => SurfaceState;
}

/** A positioning flight as asked for: places from base to base, in the type's drum configuration. */
export type LoadOf = (type: string, places: readonly string[], day: number) => FlightOnDay;

export interface FlightOnDay {
  /** What was put to the loading rules: distances, winds, surfaces and limits of that day. */
  readonly request: RouteRequest;
  readonly load: RouteLoad;
  /** Litres the flight burns out of its base's bulk, at the book density. */
  readonly ownFuelLitres: Litres;
  /** Why it cannot fly that day ("LOR is closed: notice N3"); null: it can. */
  readonly closed: string | null;
}

export interface StoreEntry {
  readonly place: string;
  readonly kind: 'base' | 'cache' | 'no cache';
}

/** A route that is flown anyway: a booked flight, or a frozen flight (no drum may be added). */
export type BookedEntry =
  | { readonly kind: 'booked'; readonly flight: BookedFlight; readonly onDay: FlightOnDay }
  | { readonly kind: 'frozen'; readonly flight: StandingFlight; readonly onDay: FlightOnDay };

export interface FrozenEntry {
  readonly flight: StandingFlight;
  readonly day: number;
  readonly onDay: FlightOnDay;
  /** Index into `problem.booked`, where its pilot is found (the one it names, if it names one). */
  readonly booked: number;
}

/** A plan with its cost and proof, whether solved or made by hand. */
export interface JudgedPlan {
  readonly plan: Plan;
  readonly cost: PlanCost;
  readonly proof: Proof;
}

/** The limits that can stand in the way of a drum. */
export type BlockingLimit =
  | 'capacity'
  | 'landing capacity'
  | 'aircraft hours'
  | 'crew'
  | 'base stock'
  | 'closed';

/** Which limit, relaxed alone, would have spared a shortage; empty: none would (no flight can get there in time). */
export interface Blocked {
  readonly store: number;
  /** Day of the problem, from 0. */
  readonly day: number;
  readonly level: ShortLevel;
  readonly by: readonly BlockingLimit[];
}
