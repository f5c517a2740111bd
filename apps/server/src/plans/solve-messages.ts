import type { EndTarget, FlightPlan, Scenario } from '@drumline/planning';

export interface SolveOptions {
  readonly endTarget: EndTarget;
  readonly seconds: number;
  readonly seed: number;
}

/** What the child is asked. `are you there` is for /health. */
export type ToChild =
  | { readonly kind: 'solve'; readonly scenario: Scenario; readonly options: SolveOptions }
  | { readonly kind: 'cancel' }
  | { readonly kind: 'are you there' };

export interface SolveProgress {
  readonly seconds: number;
  /** Best cost so far and proven bound, in cents; null: none yet. */
  readonly objective: number | null;
  readonly bound: number | null;
}

export type SolveOutcome =
  | { readonly status: 'solved'; readonly plan: FlightPlan }
  | { readonly status: 'infeasible'; readonly reasons: readonly string[] }
  | { readonly status: 'cancelled' }
  | { readonly status: 'failed'; readonly error: string };

/** What the child answers: any number of progress lines, then one outcome. */
export type FromChild =
  | { readonly kind: 'progress'; readonly progress: SolveProgress }
  | { readonly kind: 'outcome'; readonly outcome: SolveOutcome }
  | { readonly kind: 'here' };
