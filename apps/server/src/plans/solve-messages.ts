import type { FlightPlan, PlanOutcome, Scenario } from '@drumline/planning';
import type { PlanTask } from '@drumline/planning/threads';
import type { ToldProgress } from '@drumline/routing/threads';

/** What a solve is asked for. The weather's seed is the same for all plans, so that they are judged alike. */
export interface SolveOptions {
  readonly endTarget: PlanTask['endTarget'];
  readonly seed: number;
  readonly budget: PlanTask['budget'];
  readonly weather: PlanTask['weather'];
}

/** What the child is asked. `are you there` is for /health. */
export type ToChild =
  | { readonly kind: 'solve'; readonly scenario: Scenario; readonly options: SolveOptions }
  /** The best plan so far, now. */
  | { readonly kind: 'finish' }
  | { readonly kind: 'are you there' };

export type SolveProgress = ToldProgress;

export type SolveOutcome =
  | PlanOutcome
  | { readonly status: 'cancelled' }
  | { readonly status: 'failed'; readonly error: string };

/** What the child answers: a first plan soon, any number of progress lines, then one outcome. */
export type FromChild =
  | { readonly kind: 'first'; readonly plan: FlightPlan }
  | { readonly kind: 'progress'; readonly progress: SolveProgress }
  | { readonly kind: 'outcome'; readonly outcome: SolveOutcome }
  | { readonly kind: 'here' };
