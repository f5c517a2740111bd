import { checkOpenPlan } from './check-open-plan.js';
import type { OpenCost, OpenPlan, OpenProblem } from './open-problem.js';
import { type OpenSearchOptions, type OpenSearchResult, searchOpen } from './search-open.js';
import { whyNoOpenPlan } from './why-no-open-plan.js';

export interface SolveOpenOptions extends Omit<OpenSearchOptions, 'onProgress'> {
  readonly onProgress?: (progress: OpenProgress) => void;
  readonly methods?: OpenMethods;
}

/** What the caller may add to the core, which carries no solver package and no threads. */
export interface OpenMethods {
  /** In place of the search on this thread. */
  readonly search?: (problem: OpenProblem, options: OpenSearchOptions) => Promise<OpenSearchResult>;
  /** The cheapest plan below a price (cents), proven; given only for problems small enough. */
  readonly prove?: (problem: OpenProblem, below: number, limits: ProofLimits) => Promise<OpenProof>;
}

export interface ProofLimits {
  readonly clock: () => number;
  readonly shouldStop?: () => boolean;
  readonly timeLimitSeconds?: number;
}

/** What was proven below a price: the cheapest plan there, if there is one, and a bound. */
export interface OpenProof {
  /** Null: none was found that costs less than asked for. */
  readonly plan: OpenPlan | null;
  /** No plan costs less than this (cents), or than the price asked for where that is lower. */
  readonly bound: number;
  /** False: ended early. */
  readonly complete: boolean;
}

export interface OpenProgress {
  readonly stage: 'search' | 'proof';
  /** Cents; Infinity before the first plan. */
  readonly best: number;
  /** Cents; null: none known. */
  readonly bound: number | null;
  readonly seconds: number;
}

export type OpenOutcome =
  | {
      readonly status: 'solved';
      readonly plan: OpenPlan;
      readonly cost: OpenCost;
      /** No plan costs less (cents); equal to the cost where that is proven. */
      readonly bound: number | null;
      readonly seconds: number;
      readonly iterations: number;
    }
  | { readonly status: 'infeasible'; readonly reasons: readonly string[] }
  /** The budget ended with no plan and no proof that there is none. */
  | { readonly status: 'none found' };

/** Share of a time budget for the search where a proof follows. */
const SEARCH_SHARE = 0.1;

/**
 * A checked plan for an open problem with its cost (cents) and bound, or the reasons why there is none. Throws where a
 * solver's plan breaks a rule: that is a bug, never an outcome.
 */
export async function solveOpen(problem: OpenProblem, options: SolveOpenOptions): Promise<OpenOutcome> {
  const began = options.clock();
  const elapsed = () => (options.clock() - began) / 1000;
  const reasons = whyNoOpenPlan(problem);
  if (reasons.length > 0) return { status: 'infeasible', reasons };
  const found = await search(problem, options);
  const proof = await prove(problem, found, options, elapsed);
  const plan = proof?.plan ?? found.plan;
  if (!plan)
    return proof?.complete ? { status: 'infeasible', reasons: [NONE_EXISTS] } : { status: 'none found' };
  const cost = checkedCost(problem, plan);
  const bound = proof && Number.isFinite(proof.bound) ? Math.min(proof.bound, cost.total) : null;
  return { status: 'solved', plan, cost, bound, seconds: elapsed(), iterations: found.iterations };
}

const NONE_EXISTS = 'the search through all routes and quantities ended without a plan';

function search(problem: OpenProblem, options: SolveOpenOptions): Promise<OpenSearchResult> {
  const { methods, budget, onProgress, ...rest } = options;
  return (methods?.search ?? searchOpen)(problem, {
    ...rest,
    budget: 'seconds' in budget && methods?.prove ? { seconds: budget.seconds * SEARCH_SHARE } : budget,
    onProgress: ({ best, seconds }) => onProgress?.({ stage: 'search', best, bound: null, seconds }),
  });
}

async function prove(
  problem: OpenProblem,
  found: OpenSearchResult,
  { methods, budget, clock, shouldStop, onProgress }: SolveOpenOptions,
  elapsed: () => number,
): Promise<OpenProof | null> {
  if (!methods?.prove || shouldStop?.()) return null;
  const proof = await methods.prove(problem, found.cost, {
    clock,
    ...(shouldStop && { shouldStop }),
    ...('seconds' in budget && { timeLimitSeconds: Math.max(0.1, budget.seconds - elapsed()) }),
  });
  const best = proof.plan ? checkOpenPlan(problem, proof.plan).cost.total : found.cost;
  onProgress?.({ stage: 'proof', best, bound: proof.bound, seconds: elapsed() });
  return proof;
}

function checkedCost(problem: OpenProblem, plan: OpenPlan): OpenCost {
  const { faults, cost } = checkOpenPlan(problem, plan);
  const [fault] = faults;
  if (fault) throw new Error(`an open plan breaks a rule: ${fault.where}: ${fault.what}`);
  return cost;
}
