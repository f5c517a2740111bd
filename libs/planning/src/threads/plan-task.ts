import type { Progress, SolveOptions } from '@drumline/routing';
import type { EndTarget, FlightPlan, PlanOutcome, Scenario } from '../index.js';

/** What a planning thread is given. */
export interface PlanTask {
  readonly scenario: Scenario;
  readonly endTarget: EndTarget;
  readonly seed: number;
  readonly budget: SolveOptions['budget'];
  readonly weather: { readonly fortnights: number; readonly seed: number };
  /** Its first figure is set to 1 to end the search with the best plan so far. */
  readonly stop: Int32Array<SharedArrayBuffer>;
}

/** The task, and whether a first plan is wanted. */
export type WorkerTask = PlanTask & { readonly first: boolean };

/** What it sends: a first plan where one is wanted, progress now and then, the outcome at the end. */
export type PlanMessage =
  | { readonly kind: 'first'; readonly plan: FlightPlan }
  | { readonly kind: 'progress'; readonly progress: Progress }
  | { readonly kind: 'outcome'; readonly outcome: PlanOutcome };
