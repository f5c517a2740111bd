import type { Plan } from '../../plan.js';
import type { Problem } from '../../problem.js';
import { randomFrom } from '../../random.js';
import { flatten } from './flat-problem.js';
import { RuinAndRecreate } from './ruin-and-recreate.js';
import { SearchState } from './search-state.js';

export interface SearchOptions {
  readonly seed: number;
  /** The search ends after this many rounds, the same plan for the same seed, or after `seconds` of the clock. */
  readonly budget: { readonly iterations: number } | { readonly seconds: number };
  /** Milliseconds from any moment; only differences count. */
  readonly clock: () => number;
  readonly shouldStop?: () => boolean;
  /** Told about once a second. */
  readonly onProgress?: (progress: SearchProgress) => void;
  /** Routes that may be flown anew; all where it is not given. */
  readonly routes?: readonly number[];
}

export interface SearchProgress {
  /** Cents. */
  readonly best: number;
  readonly iterations: number;
  readonly seconds: number;
}

/** What the search found; cost in cents. */
export interface Found {
  readonly plan: Plan;
  readonly cost: number;
  readonly iterations: number;
}

// The temperature falls from this share of the travel cost of an average trip to this share of that.
const HOT = 0.3;
const COLD = 0.02;

/** Cents: less is rounding. */
const BETTER = 1e-3;

/**
 * A better plan than the one given, or the same: ruin and recreate, accepted by annealing from a low temperature
 * (docs/model.md, "Search"). The plan given must pass the check; so does the one returned.
 */
export function search(problem: Problem, from: Plan, options: SearchOptions): Found {
  const random = randomFrom(options.seed);
  const state = new SearchState(flatten(problem, options.routes), from);
  const given = state.cost;
  const moves = new RuinAndRecreate(state, random);
  const pace = new Pace(options);
  let best = { cost: given, plan: from };
  let current = given;
  const keep = () => {
    state.commit();
    current = state.cost;
    if (current < best.cost - BETTER) best = { cost: current, plan: state.toPlan() };
  };

  moves.complete();
  if (state.cost <= given) keep();
  else state.rollback();
  const heat = (HOT * state.money) / Math.max(1, state.active.length);
  while (pace.next(best.cost)) {
    moves.step();
    const temperature = heat * COLD ** pace.used;
    const better = state.cost < current - BETTER;
    if (state.cost < current - temperature * Math.log(random() + Number.MIN_VALUE)) keep();
    else state.rollback();
    moves.learn(better);
  }
  return { ...best, iterations: pace.iterations };
}

/** Keeps to the budget, asks whether to stop and tells how far the search is. */
class Pace {
  iterations = 0;
  /** Share of the budget used. */
  used = 0;
  private readonly began: number;
  private told: number;

  constructor(private readonly options: SearchOptions) {
    this.began = options.clock();
    this.told = this.began;
  }

  /** May there be another round? */
  next(best: number): boolean {
    const { budget, clock, shouldStop, onProgress } = this.options;
    const now = clock();
    const seconds = (now - this.began) / 1000;
    this.used = 'iterations' in budget ? this.iterations / budget.iterations : seconds / budget.seconds;
    if (!(this.used < 1) || shouldStop?.()) return false;
    this.iterations++;
    if (now - this.told > 900) {
      this.told = now;
      onProgress?.({ best, iterations: this.iterations, seconds });
    }
    return true;
  }
}
