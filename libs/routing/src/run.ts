import { checkPlan } from './check-plan.js';
import { costOf, moneyOf } from './cost.js';
import type { MethodLimits } from './methods.js';
import type { Outcome, Plan, Progress } from './plan.js';
import type { Problem } from './problem.js';
import type { SearchNews, SearchOptions } from './solvers/search/search.js';

export interface RunOptions {
  readonly seed: number;
  /** Iterations give the same plan for the same seed; seconds are those of the clock, for the whole solve. */
  readonly budget: SearchOptions['budget'];
  /** Milliseconds from any moment; only differences count. */
  readonly clock: () => number;
  readonly shouldStop?: () => boolean;
  /** Told of every better plan and bound, and at least once a second while a method works. */
  readonly onProgress?: (progress: Progress) => void;
}

/** Milliseconds after which progress is told again though nothing changed. */
const TELL_AFTER = 700;

export type Run = ReturnType<typeof startRun>;

const nothingYet = { cost: Number.POSITIVE_INFINITY, money: Number.POSITIVE_INFINITY };

/** The best plan and bound of a solve so far, and the time used. */
export function startRun(problem: Problem, { budget, clock, seed, shouldStop, onProgress }: RunOptions) {
  const began = clock();
  const elapsed = () => (clock() - began) / 1000;
  let best: { plan: Plan; cost: number; money: number; solver: string } | null = null;
  let proved: number | null = null;
  let iterations = 0;
  let told = began;
  let searched: Plan | null = null;
  const gapOf = (cost: number) => (proved === null || cost <= 0 ? null : Math.max(0, (cost - proved) / cost));
  const tell = (stage: string) => {
    told = clock();
    const { cost, money } = best ?? nothingYet;
    onProgress?.({
      stage,
      seconds: elapsed(),
      best: cost,
      bestMoney: money,
      bound: proved,
      gap: gapOf(cost),
    });
  };
  // No plan costs less than nothing: until it is above that, a bound says nothing.
  const raise = (found: number | null) => {
    if (found !== null && found >= 0) proved = Math.max(proved ?? found, found);
  };
  const take = (plan: Plan, solver: string) => {
    if (plan === best?.plan) return;
    const tiers = costOf(problem, plan);
    const cost = tiers.total;
    if (!best || cost < best.cost - 1e-6) best = { plan, cost, money: moneyOf(tiers), solver };
  };

  return {
    elapsed,
    raise,
    /** What the search has not found itself and has not been told yet: the best plan, where there is news. */
    newsForSearch(): SearchNews | null {
      if (!best || best.solver === 'search' || best.plan === searched) return null;
      searched = best.plan;
      return { plan: best.plan, isNear: best.solver === 'bound', ...(proved && { bound: proved }) };
    },
    worthPolish: false,
    best: () => best!.plan,
    /** Less than a cent from the bound. */
    proven: () => proved !== null && best !== null && best.cost - proved < 1,
    offer(plan: Plan, solver: string, rounds = 0) {
      iterations += rounds;
      take(plan, solver);
      tell(solver);
    },
    /** Limits of a method that may use this share of the time left. */
    limits: (stage: string, share: number): MethodLimits => ({
      seconds: 'seconds' in budget ? Math.max(0, budget.seconds - elapsed()) * share : null,
      clock,
      shouldStop: () => {
        if (clock() - told > TELL_AFTER) tell(stage);
        return shouldStop?.() ?? false;
      },
      latest: () => best!.plan,
      beside: false,
      onProgress: ({ plan, bound = null }) => {
        raise(bound);
        if (plan) take(plan, stage);
        tell(stage);
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
