import type { Plan } from './plan.js';
import type { Problem } from './problem.js';
import type { SearchOptions } from './solvers/search/search.js';

/** What the caller may add to the core of `solve`, which carries no solver package and no threads. */
export interface Methods {
  /** A proven lower bound (cents); a plan to start from and the routes worth flying anew, where it knows them. */
  readonly bound?: (problem: Problem, limits: MethodLimits) => Promise<Bound>;
  /**
   * In place of the search on this thread. With a time budget it begins while the bound is still at work, and takes
   * up what `guide` brings.
   */
  readonly search?: (
    problem: Problem,
    from: Plan,
    options: SearchOptions,
    guide?: Promise<Bound>,
  ) => Promise<SearchResult>;
  /** A cheaper plan than the one given, or the same; a better bound, where it proves one. */
  readonly polish?: (problem: Problem, plan: Plan, limits: MethodLimits) => Promise<Polished>;
  /** Lets go of what the methods hold; `solve` is done with them. */
  readonly release?: () => void;
}

export interface Bound {
  readonly bound: number | null;
  readonly start?: Plan;
  readonly routes?: readonly number[];
  /** False: so many patterns can better the start that a polish at the end would be a waste of time. */
  readonly worthPolish?: boolean;
}

export interface Polished {
  readonly plan: Plan;
  readonly bound: number | null;
}

export interface SearchResult {
  readonly plan: Plan;
  readonly iterations: number;
}

export interface MethodLimits {
  /** Of the clock; null: none, end on your own and alike every time. */
  readonly seconds: number | null;
  readonly clock: () => number;
  readonly shouldStop: () => boolean;
  /** The best plan known by now. */
  readonly latest: () => Plan;
  /** A search is at work meanwhile. */
  readonly beside: boolean;
  readonly onProgress: (found: { readonly plan?: Plan; readonly bound?: number }) => void;
}
