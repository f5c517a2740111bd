/**
 * Inventory routing with open routes: one base, a fleet of equal vehicles, and routes of any number of stops that the
 * solver builds itself from a matrix of travel costs. Plain JSON. Stock is in whole units, money in cents; days
 * count from 0. Site `i` of `sites` is place `i + 1` of the matrix; place 0 is the base.
 *
 * Order of a day: deliveries (the level after them must not exceed the maximum), then the sites draw their demand
 * (the level after it must not fall below the minimum) and the base produces, then holding is paid on what is
 * left. What the base produces on a day can be loaded from the next day. Opening stock costs nothing.
 */
export interface OpenProblem {
  readonly days: number;
  readonly fleet: Fleet;
  readonly base: Base;
  /** One at least. */
  readonly sites: readonly Site[];
  /** Cents from one place (row) to another (column); not necessarily the same both ways. */
  readonly travelCost: readonly (readonly number[])[];
}

/** Each vehicle travels at most one route a day. */
export interface Fleet {
  readonly vehicles: number;
  /** Units aboard one vehicle. */
  readonly capacity: number;
}

export interface Base {
  readonly opening: number;
  /** Units by day. */
  readonly production: readonly number[];
  /** Cents per unit and end of day. */
  readonly holdingCost: number;
}

/** Visited at most once a day. */
export interface Site {
  readonly id: string;
  /** At most `maximum`. */
  readonly opening: number;
  /** Units by day. */
  readonly demand: readonly number[];
  readonly minimum: number;
  readonly maximum: number;
  /** Cents per unit and end of day. */
  readonly holdingCost: number;
}

export interface OpenPlan {
  readonly routes: readonly OpenRoute[];
}

/** One vehicle on one day: base, the stops in order, base. */
export interface OpenRoute {
  readonly day: number;
  readonly stops: readonly OpenStop[];
}

export interface OpenStop {
  /** Index into `sites`. */
  readonly site: number;
  /** Units set down. */
  readonly quantity: number;
}

/** Cents. */
export interface OpenCost {
  readonly travel: number;
  readonly holding: number;
  readonly total: number;
}
