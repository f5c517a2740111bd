import type { Bound, Methods } from './methods.js';
import type { Outcome, Plan } from './plan.js';
import type { Problem } from './problem.js';
import { type Run, type RunOptions, startRun } from './run.js';
import { handRule } from './solvers/hand-rule.js';
import { search } from './solvers/search/search.js';
import { validate } from './validate.js';

export interface SolveOptions extends RunOptions {
  /** A plan to better, where there is one; it must pass the check. The hand rule's is taken if it is cheaper. */
  readonly from?: Plan;
  readonly methods?: Methods;
}

// Shares of the time for a bound before the search, for one beside it, and for the polish.
const BOUND_FIRST_SHARE = 0.3;
const BOUND_BESIDE_SHARE = 0.9;
const POLISH_SHARE = 0.15;

/**
 * A checked plan for the problem with its cost (cents) and proof, or the reasons why there is none. Throws
 * where a solver's plan breaks a rule: that is a bug, never an outcome.
 */
export async function solve(problem: Problem, options: SolveOptions): Promise<Outcome> {
  const reasons = validate(problem);
  if (reasons.length > 0) return { status: 'infeasible', reasons };
  const run = startRun(problem, options);
  try {
    run.offer(handRule(problem), 'hand rule');
    if (options.from) run.offer(options.from, 'given plan');
    const guide = bound(problem, options, run);
    await improve(problem, options, run, guide);
    await polish(problem, options, run);
    return run.outcome();
  } finally {
    options.methods?.release?.();
  }
}

/** Does the search run in other threads, so that the bound need not come first? */
const isBeside = ({ methods, budget }: SolveOptions) => methods?.search !== undefined && 'seconds' in budget;

async function bound(problem: Problem, options: SolveOptions, run: Run): Promise<Bound> {
  if (!options.methods?.bound) {
    run.worthPolish = true;
    return { bound: null };
  }
  const beside = isBeside(options);
  const limits = run.limits('bound', beside ? BOUND_BESIDE_SHARE : BOUND_FIRST_SHARE);
  const found = await options.methods.bound(problem, { ...limits, beside });
  run.raise(found.bound);
  if (found.start) run.offer(found.start, 'bound');
  run.worthPolish = found.worthPolish !== false;
  return found;
}

async function improve(problem: Problem, options: SolveOptions, run: Run, guide: Promise<Bound>) {
  const { seed, clock, methods } = options;
  const known = isBeside(options) ? undefined : await guide;
  if (run.proven()) return;
  const limits = run.limits('search', known && run.worthPolish ? 1 - POLISH_SHARE : 1);
  const searchOptions = {
    seed,
    clock,
    budget: limits.seconds === null ? options.budget : { seconds: limits.seconds },
    shouldStop: () => limits.shouldStop() || run.proven() || (!known && isTimeToPolish(options, run)),
    onProgress: limits.onProgress,
    news: run.newsForSearch,
    ...(known?.routes && { routes: known.routes }),
  };
  const found = methods?.search
    ? await methods.search(problem, run.best(), searchOptions, known ? undefined : guide)
    : search(problem, run.best(), searchOptions);
  run.offer(found.plan, 'search', found.iterations);
}

const isTimeToPolish = ({ budget }: SolveOptions, run: Run) =>
  run.worthPolish && 'seconds' in budget && run.elapsed() > (1 - POLISH_SHARE) * budget.seconds;

async function polish(problem: Problem, options: SolveOptions, run: Run): Promise<void> {
  const { methods, shouldStop } = options;
  if (!methods?.polish || !run.worthPolish || run.proven() || shouldStop?.()) return;
  const found = await methods.polish(problem, run.best(), run.limits('polish', 1));
  run.raise(found.bound);
  run.offer(found.plan, 'polish');
}
