import type { SolveLinearProgram } from '../milp/linear-program.js';
import { pick, type Random, randomFrom } from '../random.js';
import { adjustQuantities } from './adjust-quantities.js';
import { type FlatOpenProblem, flattenOpen } from './flat-open-problem.js';
import type { OpenPlan, OpenProblem } from './open-problem.js';
import { isBetter, isFeasible, OpenState, stateOfPlan } from './open-state.js';
import { Rebuild } from './rebuild.js';
import { nearSites, ruins } from './ruin-sites.js';
import { shakeRoutes } from './shake-routes.js';

export interface OpenSearchOptions {
  readonly seed: number;
  readonly budget: { readonly iterations: number } | { readonly seconds: number };
  /** Milliseconds from any moment; only differences count. */
  readonly clock: () => number;
  readonly shouldStop?: () => boolean;
  /** Told of each better plan, and once a second. */
  readonly onProgress?: (progress: OpenSearchProgress) => void;
  /** Exact quantities for the visits of a new best plan. */
  readonly linear?: SolveLinearProgram;
}

export interface OpenSearchProgress {
  readonly best: number;
  readonly iterations: number;
  readonly seconds: number;
}

export interface OpenSearchResult {
  /** Null: no plan was found in which no site runs short. */
  readonly plan: OpenPlan | null;
  /** Cents. */
  readonly cost: number;
  readonly iterations: number;
}

// The first anneal: its share of the budget, and how hot it starts, as a share of the cost.
const FIRST_SHARE = 0.25;
const FIRST_HOT = 0.003;
// A later cycle: rounds per site, heat at its start; heat at the end of any, as a share of the start.
const ROUNDS_PER_SITE = 1000;
const HOT = 0.001;
const COLD = 0.02;
/** How long a closed route stays closed, as a share of the cycle. */
const CLOSED_SHARE = 0.7;
/** Most sites taken off in a round. */
const MOST_SITES = 8;
/** Most that a detour is taken dearer or cheaper than it is, as a share. */
const MOST_NOISE = 0.3;
// A cycle may end this much (share of the cost) above where it began, and above the best, and be gone on from.
const DRIFT = 0.002;
const FAR = 0.01;

/**
 * The best plan found by ruin and recreate: some sites are taken off the plan and returned, each over all days at
 * once. Annealing goes in cycles; each starts from the best plan with one route closed or opened. The same seed and iterations
 * give the same plan.
 */
export async function searchOpen(
  problem: OpenProblem,
  options: OpenSearchOptions,
): Promise<OpenSearchResult> {
  const search = new OpenSearch(flattenOpen(problem), options);
  search.construct();
  await search.settle();
  while (!search.isOver()) await search.cycle();
  return search.result();
}

class OpenSearch {
  private readonly random: Random;
  private readonly began: number;
  private readonly rebuild: Rebuild;
  private readonly current: OpenState;
  private readonly best: OpenState;
  /** Where the next cycle starts. */
  private readonly home: OpenState;
  private readonly near: readonly number[][];
  private readonly weights = ruins.map(() => 1);
  private iterations = 0;
  private told: number;
  /** Whether the best plan has had its exact quantities. */
  private adjusted = true;

  constructor(
    private readonly flat: FlatOpenProblem,
    private readonly options: OpenSearchOptions,
  ) {
    this.random = randomFrom(options.seed);
    this.began = this.told = options.clock();
    this.rebuild = new Rebuild(flat, this.random);
    this.current = new OpenState(flat);
    this.best = new OpenState(flat);
    this.home = new OpenState(flat);
    this.near = nearSites(this.current);
  }

  construct(): void {
    const { trial } = this.rebuild;
    this.rebuild.bringBack([...Array(this.flat.sites).keys()], 0);
    this.current.copyFrom(trial);
    this.best.copyFrom(trial);
    this.tell();
  }

  isOver(): boolean {
    const { budget, shouldStop } = this.options;
    if ('iterations' in budget) return this.iterations >= budget.iterations || (shouldStop?.() ?? false);
    return (this.iterations & 15) === 0 && (this.spent() >= 1 || (shouldStop?.() ?? false));
  }

  /** A long anneal first, for a share of the budget; then short ones, each after a change of the routes by day. */
  async settle(): Promise<void> {
    const { current, home } = this;
    await this.anneal(FIRST_HOT, () => this.spent() / FIRST_SHARE);
    home.copyFrom(current);
  }

  async cycle(): Promise<void> {
    const { current, home, best, random, rebuild } = this;
    rebuild.trial.copyFrom(home);
    shakeRoutes(rebuild, random, this.near);
    current.copyFrom(rebuild.trial);
    const from = this.iterations;
    const rounds = ROUNDS_PER_SITE * Math.max(10, this.flat.sites);
    await this.anneal(HOT, () => (this.iterations - from) / rounds);
    const price = rebuild.price(current);
    const drifted = rebuild.price(home) + DRIFT * best.money * random();
    if (price < drifted && price < rebuild.price(best) + FAR * best.money) home.copyFrom(current);
    else if (random() < 0.1) home.copyFrom(best);
  }

  private async anneal(hotness: number, progressOf: () => number): Promise<void> {
    const { current, best, rebuild } = this;
    const hot = hotness * best.money;
    let temperature = hot;
    for (let progress = 0; progress < 1 && !this.isOver(); ) {
      if (progress > CLOSED_SHARE) rebuild.mostRoutes.fill(this.flat.vehicles);
      this.round(temperature);
      if ((this.iterations & 15) !== 0) continue;
      if (this.options.clock() - this.told > 900) this.tell();
      progress = progressOf();
      temperature = hot * COLD ** progress;
    }
    rebuild.mostRoutes.fill(this.flat.vehicles);
    if (rebuild.price(current) < best.money * (1 + FAR)) await this.adjust(current);
    if (!this.adjusted) await this.adjust(best);
    this.adjusted = true;
  }

  private round(temperature: number): void {
    const { current, best, random, rebuild, weights } = this;
    const { trial } = rebuild;
    this.iterations++;
    trial.copyFrom(current);
    const ruin = choose(weights, random());
    const count = 1 + pick(random, Math.min(MOST_SITES, this.flat.sites));
    const sites = ruins[ruin](trial, count, random, this.near);
    rebuild.bringBack(sites, random() < 0.5 ? 0 : MOST_NOISE * random());
    const gain = rebuild.price(current) - rebuild.price(trial);
    if (gain > temperature * Math.log(random() + 1e-12)) {
      if (gain > 1e-3) weights[ruin] += 0.05;
      rebuild.exchangeStopsOf(sites);
      current.copyFrom(trial);
      if (isBetter(current, best)) {
        best.copyFrom(current);
        this.adjusted = false;
        this.tell();
      }
    }
    weights[ruin] = 0.2 + (weights[ruin] - 0.2) * 0.999;
    rebuild.adaptPrices(current);
  }

  /** Exact quantities for the routes of a state, which can mend a shortage or an overload. */
  private async adjust(state: OpenState): Promise<void> {
    const { linear } = this.options;
    if (!linear) return;
    const plan = await adjustQuantities(this.flat.problem, state.toPlan(), linear);
    if (!plan) return;
    const adjusted = stateOfPlan(this.flat, plan);
    if (adjusted.money < this.current.money || !isFeasible(this.current)) this.current.copyFrom(adjusted);
    if (!isBetter(adjusted, this.best)) return;
    this.best.copyFrom(adjusted);
    this.tell();
  }

  result(): OpenSearchResult {
    const found = isFeasible(this.best);
    return {
      plan: found ? this.best.toPlan() : null,
      cost: found ? this.best.money : Number.POSITIVE_INFINITY,
      iterations: this.iterations,
    };
  }

  private spent(): number {
    const { budget } = this.options;
    return 'iterations' in budget ? this.iterations / budget.iterations : this.seconds() / budget.seconds;
  }

  private seconds(): number {
    return (this.options.clock() - this.began) / 1000;
  }

  private tell(): void {
    this.told = this.options.clock();
    const best = isFeasible(this.best) ? this.best.money : Number.POSITIVE_INFINITY;
    this.options.onProgress?.({ best, iterations: this.iterations, seconds: this.seconds() });
  }
}

function choose(weights: readonly number[], at: number): number {
  let left = at * weights.reduce((sum, weight) => sum + weight, 0);
  const chosen = weights.findIndex((weight) => {
    left -= weight;
    return left < 0;
  });
  return Math.max(0, chosen);
}
