/**
 * Inventory routing in general: stores that are drawn down day by day, vehicles that carry whole
 * packs to them along routes, and the price of letting a level fall. Plain JSON; no trade words of fuel.
 *
 * Indices, not names, point between lists: `route.stops` holds indices into `stores`, and so on.
 * Days count from 0. Levels are in stock units; a pack is `packSize` stock units. Money is in cents.
 */
export interface Problem {
  readonly days: number;
  readonly packSize: number;
  readonly stores: readonly Store[];
  readonly vehicles: readonly Vehicle[];
  /** Candidate routes, built from the carrier's own rules by the pool. */
  readonly routes: readonly Route[];
  /** Routes that are travelled anyway on a given day: packs may be added to them, nothing else. */
  readonly booked: readonly BookedRoute[];
  /** Groups of people one of whom must go with a route; empty: nobody is needed. */
  readonly crews: readonly Crew[];
  /** Flights of the standing plan that a new plan may keep for nothing or drop at `changePrice` each. */
  readonly standing: readonly StandingVisit[];
  readonly changePrice: number;
}

/**
 * A place that keeps stock. Order of a day: arrivals and deliveries (must fit the capacity on a day with a
 * delivery), then losses (what is not there to be lost is unmet), then the demand is drawn down to the floor
 * (what cannot be drawn is unmet and lost), then the level is tested.
 */
export interface Store {
  readonly id: string;
  readonly opening: number;
  /** Most stock it may hold after deliveries, by day; null: no limit. */
  readonly capacity: readonly number[] | null;
  /** Known stock coming in, by day, before deliveries. */
  readonly arrivals: readonly number[];
  /** Known stock leaving before the demand is drawn (moved on, no longer fit), by day. */
  readonly losses: readonly number[];
  readonly demand: readonly number[];
  /** No demand is drawn below this. */
  readonly floor: number;
  readonly minimum: number;
  readonly critical: number;
  /** A level at or above the minimum that is worth a little money: it makes plans less fragile. */
  readonly cushion: number;
  readonly endTarget: number;
  /** Most packs that can be set down there, by day; null: no limit. */
  readonly packsPerDay: readonly number[] | null;
  readonly prices: StorePrices;
  /** Set where routes load packs; null at a store that only receives. */
  readonly supply: Supply | null;
}

/** Money (cents) per stock unit: unmet once, below a level at every end of day, short of the end target at the end. */
export interface StorePrices {
  readonly unmet: number;
  readonly belowMinimum: number;
  readonly belowCritical: number;
  readonly belowCushion: number;
  readonly belowEndTarget: number;
}

/**
 * Packs ready to load at a source, cumulated by day, and the common stock behind packs and the vehicles' own
 * use. What routes take is counted here only: it does not change the level of the source as a store.
 */
export interface Supply {
  /** Cost of one pack taken here, handling included. */
  readonly packCost: number;
  /** Packs that can have been taken from the first day to the end of each day, deliveries to this store not counted. */
  readonly packsByDay: readonly number[];
  /** Stock units available to packs and own use together, cumulated by day; null: not limited. */
  readonly unitsByDay: readonly number[] | null;
}

/** It travels the routes of its kind that leave from its home and end there. */
export interface Vehicle {
  readonly id: string;
  /** Routes name the kind of vehicle that may travel them. */
  readonly kind: string;
  readonly home: number;
  /** Block and duty hours available, by day; 0: away. */
  readonly blockHours: readonly number[];
  readonly dutyHours: readonly number[];
  /** Most duty hours in any run of `days` days; null: no limit. */
  readonly rolling: { readonly days: number; readonly dutyHours: number } | null;
}

/** A round through one to a few stops and back to a base, for one kind of vehicle. */
export interface Route {
  readonly kind: string;
  readonly source: number;
  readonly stops: readonly number[];
  readonly end: number;
  /** What it costs and carries under each set of conditions met in the horizon. */
  readonly conditions: readonly RouteConditions[];
  /** Index into `conditions`, by day; -1: cannot be travelled that day. */
  readonly conditionByDay: readonly number[];
  /** Index into the crew groups that may go with it; -1: nobody is needed. */
  readonly crewGroup: number;
}

export interface RouteConditions {
  readonly blockHours: number;
  readonly dutyHours: number;
  /** Money for travelling it, packs apart. */
  readonly cost: number;
  /** Most packs aboard on each leg to a stop; `legPacks[i]` is aboard on arrival at `stops[i]`. */
  readonly legPacks: readonly number[];
  /** Stock units of the source used by the vehicle itself. */
  readonly ownUse: number;
}

export interface BookedRoute {
  readonly id: string;
  readonly day: number;
  readonly source: number;
  readonly stops: readonly number[];
  readonly legPacks: readonly number[];
  readonly blockHours: number;
  readonly dutyHours: number;
  readonly crewGroup: number;
}

/** A person with hours; `groups` lists, by day, the crew groups that he or she may serve. */
export interface Crew {
  readonly id: string;
  readonly groupsByDay: readonly (readonly number[])[];
  readonly blockHours: readonly number[];
  readonly dutyHours: readonly number[];
  readonly rolling: {
    readonly days: number;
    readonly blockHours: number;
    /** Block hours on the days before the first, the last figure the day before it. */
    readonly flownBefore: readonly number[];
  } | null;
}

/** Kept by a trip of the same vehicle, day and stops in order; each asks for a trip of its own. */
export interface StandingVisit {
  readonly vehicle: number;
  readonly day: number;
  readonly stops: readonly number[];
}
