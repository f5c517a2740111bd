/** What is travelled: each trip is one vehicle on one route on one day, with the packs set down at each stop. */
export interface Plan {
  readonly trips: readonly Trip[];
  /** Packs added to booked routes, one row a booked route, one figure a stop. */
  readonly bookedDrops: readonly (readonly number[])[];
  /** Crew of each booked route; -1 where nobody is needed. */
  readonly bookedCrews: readonly number[];
}

export interface Trip {
  readonly vehicle: number;
  readonly day: number;
  /** Index into `problem.routes`. */
  readonly route: number;
  readonly drops: readonly number[];
  /** Index into `problem.crews`; -1 where nobody is needed. */
  readonly crew: number;
}

/** Cost of a plan, its tiers apart; all in cents. */
export interface PlanCost {
  readonly travel: number;
  readonly packs: number;
  readonly changes: number;
  readonly endShort: number;
  readonly belowCushion: number;
  readonly belowMinimum: number;
  readonly belowCritical: number;
  readonly unmet: number;
  readonly total: number;
}

/** How good a plan is known to be. Bounds hold for the routes in the problem's pool. */
export interface Proof {
  readonly objective: number;
  readonly bound: number | null;
  /** (objective - bound) / objective; null without a bound. */
  readonly gap: number | null;
  readonly seconds: number;
  readonly solver: string;
  readonly seed: number;
  readonly iterations: number;
}

export interface Progress {
  readonly stage: string;
  readonly seconds: number;
  readonly best: number;
  /** Of `best`, what is paid: travel and packs. The rest is what is short or changed, at its price. */
  readonly bestMoney: number;
  readonly bound: number | null;
  readonly gap: number | null;
}

export type Outcome =
  | { readonly status: 'solved'; readonly plan: Plan; readonly cost: PlanCost; readonly proof: Proof }
  | { readonly status: 'infeasible'; readonly reasons: readonly string[] };
