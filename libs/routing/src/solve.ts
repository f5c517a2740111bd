import { checkPlan } from './check-plan.js';
import { costOf } from './cost.js';
import type { Outcome, Plan, Progress } from './plan.js';
import type { Problem } from './problem.js';
import { handRule } from './solvers/hand-rule.js';
import { type SearchOptions, search } from './solvers/search/search.js';
import { validate } from './validate.js';

export interface SolveOptions {
  readonly seed: number;
  /** Iterations give the same plan for the same seed; seconds are those of the clock, for the whole solve. */
  readonly budget: SearchOptions['budget'];
  /** Milliseconds from any moment; only differences count. */
  readonly clock: () => number;
  readonly shouldStop?: () => boolean;
  readonly onProgress?: (progress: Progress) => void;
  /** A plan to better, where there is one; it must pass the check. The hand rule's is taken if it is cheaper. */
  readonly from?: Plan;
  readonly methods?: Methods;
}

/** What the caller may add to the core, which carries no solver package and no threads. */
export interface Methods {
  /** A proven lower bound (cents); a plan to start from and the routes worth flying anew, where it knows them. */
  readonly bound?: (problem: Problem, limits: MethodLimits) => Promise<Bound>;
  /** In place of the search on this thread. */
  readonly search?: (problem: Problem, from: Plan, options: SearchOptions) => Promise<SearchResult>;
  /** A cheaper plan than the one given, or the same; a better bound, where it proves one. */
  readonly polish?: (problem: Problem, plan: Plan, limits: MethodLimits) => Promise<Polished>;
}

export interface Bound {
  readonly bound: number | null;
  readonly start?: Plan;
  readonly routes?: readonly number[];
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
  readonly onProgress: (found: { best?: number; bound?: number }) => void;
}

// Shares of the time for the bound and for the polish.
const BOUND_SHARE = 0.3;
const POLISH_SHARE = 0.15;

/**
 * A checked plan for the problem with its cost (cents) and proof, or the reasons why there is none. Throws
 * where a solver's plan breaks a rule: that is a bug, never an outcome.
 */
export async function solve(problem: Problem, options: SolveOptions): Promise<Outcome> {
  const reasons = validate(problem);
  if (reasons.length > 0) return { status: 'infeasible', reasons };
  const run = startRun(problem, options);
  run.offer(handRule(problem), 'hand rule');
  if (options.from) run.offer(options.from, 'given plan');
  const routes = await bound(problem, options, run);
  await improve(problem, options, run, routes);
  await polish(problem, options, run);
  return run.outcome();
}

async function bound(
  problem: Problem,
  { methods }: SolveOptions,
  run: Run,
): Promise<readonly number[] | undefined> {
  if (!methods?.bound) return undefined;
  const found = await methods.bound(problem, run.limits('bound', BOUND_SHARE));
  run.raise(found.bound);
  if (found.start) run.offer(found.start, 'bound');
  return found.routes;
}

async function improve(problem: Problem, options: SolveOptions, run: Run, routes?: readonly number[]) {
  const { seed, clock, methods } = options;
  if (run.proven()) return;
  const { shouldStop, onProgress, seconds } = run.limits('search', methods?.polish ? 1 - POLISH_SHARE : 1);
  const found = await (methods?.search ?? onThisThread)(problem, run.best(), {
    seed,
    clock,
    shouldStop,
    onProgress,
    budget: seconds === null ? options.budget : { seconds },
    ...(routes && { routes }),
  });
  run.offer(found.plan, 'search', found.iterations);
}

const onThisThread: NonNullable<Methods['search']> = async (problem, from, options) =>
  search(problem, from, options);

async function polish(problem: Problem, { methods }: SolveOptions, run: Run): Promise<void> {
  if (!methods?.polish || run.proven()) return;
  const found = await methods.polish(problem, run.best(), run.limits('polish', 1));
  run.raise(found.bound);
  run.offer(found.plan, 'polish');
}

type Run = ReturnType<typeof startRun>;

/** The best plan and bound so far, and the time used. */
function startRun(problem: Problem, { budget, clock, seed, shouldStop, onProgress }: SolveOptions) {
  const began = clock();
  const elapsed = () => (clock() - began) / 1000;
  let best: { plan: Plan; cost: number; solver: string } | null = null;
  let proved: number | null = null;
  let iterations = 0;
  const gapOf = (cost: number) => (proved === null || cost <= 0 ? null : Math.max(0, (cost - proved) / cost));
  const tell = (stage: string, cost = best?.cost ?? Number.POSITIVE_INFINITY) =>
    onProgress?.({ stage, seconds: elapsed(), best: cost, bound: proved, gap: gapOf(cost) });
  const raise = (found: number | null) => {
    if (found !== null) proved = Math.max(proved ?? found, found);
  };

  return {
    raise,
    best: () => best!.plan,
    /** Less than a cent from the bound. */
    proven: () => proved !== null && best !== null && best.cost - proved < 1,
    offer(plan: Plan, solver: string, rounds = 0) {
      iterations += rounds;
      const cost = costOf(problem, plan).total;
      if (!best || cost < best.cost - 1e-6) best = { plan, cost, solver };
      tell(solver);
    },
    /** Limits of a method that may use this share of the time left. */
    limits: (stage: string, share: number): MethodLimits => ({
      seconds: 'seconds' in budget ? Math.max(0, budget.seconds - elapsed()) * share : null,
      clock,
      shouldStop: () => shouldStop?.() ?? false,
      onProgress: (found) => {
        raise(found.bound ?? null);
        tell(stage, Math.min(found.best ?? Number.POSITIVE_INFINITY, best?.cost ?? Number.POSITIVE_INFINITY));
      },
    }),
    outcome: (): Outcome => {
      const { plan, solver } = best!;
      const { faults, cost } = checkPlan(problem, plan);
      const [fault] = faults;
      if (fault) throw new Error(`plan of ${solver} breaks a rule: ${fault.where}: ${fault.what}`);
      const objective = cost.total;
      const proof = {
        objective,
        bound: proved,
        gap: gapOf(objective),
        seconds: elapsed(),
        solver,
        seed,
        iterations,
      };
      return { status: 'solved', plan, cost, proof };
    },
  };
}
