import type { Plan } from '../../plan.js';
import type { Problem } from '../../problem.js';
import { type Random, randomFrom } from '../../random.js';
import { Anneal } from './anneal.js';
import { type FlatProblem, flatten } from './flat-problem.js';
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
  /** Asked about once a second for what others have found. */
  readonly news?: () => SearchNews | null;
  /** Routes that may be flown anew; all where it is not given. */
  readonly routes?: readonly number[];
  /** The plan given is a good one: the anneal begins cooler. */
  readonly isNear?: boolean;
  /** Cents below which no plan costs, where that is known: says how near a plan is. */
  readonly bound?: number;
}

/** What others have found while a search is on its way. */
export interface SearchNews {
  /** To go on from, if it is cheaper than the best so far; it must pass the check. */
  readonly plan?: Plan;
  /** Routes that may be flown anew from now on. */
  readonly routes?: readonly number[];
  /** The plan is a good one, found another way: the anneal begins again, cooler. */
  readonly isNear?: boolean;
  /** Cents below which no plan costs. */
  readonly bound?: number;
}

export interface SearchProgress {
  readonly plan: Plan;
  /** Cost of the plan (cents). */
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

/** Milliseconds. */
const TELL_AFTER = 900;

/** Cents: less is rounding. */
const BETTER = 1e-3;

/**
 * A better plan than the one given, or the same: ruin and recreate, accepted by annealing from a low temperature
 * (docs/model.md, "Search"). The plan given must pass the check; so does the one returned.
 */
export function search(problem: Problem, from: Plan, options: SearchOptions): Found {
  const random = randomFrom(options.seed);
  const pace = new Pace(options);
  const anneal = new Anneal(problem.stores.length);
  let { bound } = options;
  let walk = new Walk(flatten(problem, options.routes), from, random);
  const beginAgain = () => anneal.again(pace, bound ? walk.best.cost / bound - 1 : 0);
  if (options.isNear) beginAgain();
  walk.complete();
  while (pace.next()) {
    if (anneal.isOver(pace)) {
      beginAgain();
      walk = walk.fromBest();
    }
    walk.step(anneal.temperature(pace));
    if (!pace.isTimeToTell()) continue;
    pace.tell(walk.best);
    const news = options.news?.();
    if (!news) continue;
    bound = news.bound ?? bound;
    walk = walk.withNews(news);
    if (news.isNear) beginAgain();
  }
  return { ...walk.best, iterations: pace.iterations };
}

/** A plan under change by annealing, and the best one seen. */
class Walk {
  best: { readonly cost: number; readonly plan: Plan };
  private readonly state: SearchState;
  private readonly moves: RuinAndRecreate;
  private readonly tripCost: number;
  private current: number;

  constructor(
    private readonly flat: FlatProblem,
    from: Plan,
    private readonly random: Random,
  ) {
    this.state = new SearchState(flat, from);
    this.current = this.state.cost;
    this.best = { cost: this.current, plan: from };
    this.moves = new RuinAndRecreate(this.state, random);
    this.tripCost = this.state.money / Math.max(1, this.state.active.length);
  }

  complete(): void {
    this.moves.complete();
    if (this.state.cost <= this.current) this.keep();
    else this.state.rollback();
  }

  /** One round; `heat`: the temperature as a share of the travel cost of an average trip. */
  step(heat: number): void {
    const { state, moves, current } = this;
    moves.step();
    const temperature = this.tripCost * heat;
    const better = state.cost < current - BETTER;
    if (state.cost < current - temperature * Math.log(this.random() + Number.MIN_VALUE)) this.keep();
    else state.rollback();
    moves.learn(better);
  }

  /** The walk to go on with from the best plan seen. */
  fromBest(): Walk {
    return new Walk(this.flat, this.best.plan, this.random);
  }

  /** The walk to go on with. */
  withNews({ plan, routes }: SearchNews): Walk {
    const flat = routes ? flatten(this.flat.problem, routes) : this.flat;
    const mine = new Walk(flat, this.best.plan, this.random);
    const theirs = plan ? new Walk(flat, plan, this.random) : mine;
    if (theirs.current < mine.current - BETTER) return theirs;
    return routes ? mine : this;
  }

  private keep(): void {
    this.state.commit();
    this.current = this.state.cost;
    if (this.current < this.best.cost - BETTER) this.best = { cost: this.current, plan: this.state.toPlan() };
  }
}

/** Keeps to the budget, asks whether to stop and tells how far the search is. */
class Pace {
  iterations = 0;
  /** Share of the budget used. */
  used = 0;
  private readonly began: number;
  private now: number;
  private told: number;

  constructor(private readonly options: SearchOptions) {
    this.began = options.clock();
    this.now = this.began;
    this.told = this.began;
  }

  /** May there be another round? */
  next(): boolean {
    const { budget, clock, shouldStop } = this.options;
    this.now = clock();
    const seconds = (this.now - this.began) / 1000;
    this.used = 'iterations' in budget ? this.iterations / budget.iterations : seconds / budget.seconds;
    if (!(this.used < 1) || shouldStop?.()) return false;
    this.iterations++;
    return true;
  }

  isTimeToTell(): boolean {
    return this.now - this.told > TELL_AFTER;
  }

  tell({ plan, cost }: { readonly plan: Plan; readonly cost: number }): void {
    this.told = this.now;
    const seconds = (this.now - this.began) / 1000;
    this.options.onProgress?.({ plan, best: cost, iterations: this.iterations, seconds });
  }
}
