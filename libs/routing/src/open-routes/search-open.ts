import type { SolveLinearProgram } from '../milp/linear-program.js';
import { pick, type Random, randomFrom } from '../random.js';
import { adjustQuantities } from './adjust-quantities.js';
import type { OpenPlan, OpenProblem } from './open-problem.js';
import { type FlatOpenProblem, flattenOpen, OpenState, stateOfPlan } from './open-state.js';
import { SiteReinserter } from './reinsert-site.js';
import { nearSites, ruins } from './ruin-sites.js';
import { shortenRoute } from './shorten-route.js';

export interface OpenSearchOptions {
  readonly seed: number;
  readonly budget: { readonly iterations: number } | { readonly seconds: number };
  /** Milliseconds from any moment; only differences count. */
  readonly clock: () => number;
  readonly shouldStop?: () => boolean;
  /** Told of each better plan, and once a second. Cents; Infinity before the first plan. */
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

/** Rounds of an annealing cycle per site. */
export const TUNE = { cycle: 300, hot: 0.003, cold: 0.02, most: 8, limitShare: 0.6 , noise: 0.3};

/**
 * The best plan found by ruin and recreate: some sites are taken off the plan and returned, each over all days at
 * once. Annealing goes in cycles; each starts from the best plan with one route closed or opened. The same seed and iterations
 * give the same plan.
 */
export async function searchOpen(problem: OpenProblem, options: OpenSearchOptions): Promise<OpenSearchResult> {
  const search = new OpenSearch(flattenOpen(problem), options);
  search.construct();
  while (!search.isOver()) await search.cycle();
  return search.result();
}

class OpenSearch {
  private readonly random: Random;
  private readonly began: number;
  private readonly current: OpenState;
  private readonly trial: OpenState;
  private readonly best: OpenState;
  private readonly reinserter: SiteReinserter;
  private readonly near: readonly number[][];
  private readonly weights = ruins.map(() => 1);
  private readonly mostRoutes: Int16Array;
  private shortPrice: number;
  private iterations = 0;
  private told: number;
  private adjusted = true;

  constructor(
    private readonly flat: FlatOpenProblem,
    private readonly options: OpenSearchOptions,
  ) {
    this.random = randomFrom(options.seed);
    this.began = this.told = options.clock();
    this.current = new OpenState(flat);
    this.trial = new OpenState(flat);
    this.best = new OpenState(flat);
    this.reinserter = new SiteReinserter(this.trial, this.random);
    this.near = nearSites(this.trial);
    this.mostRoutes = new Int16Array(flat.days).fill(flat.vehicles);
    this.shortPrice = usualUnitPrice(flat);
  }

  construct(): void {
    this.bringBack([...Array(this.flat.sites).keys()], 0);
    this.current.copyFrom(this.trial);
    this.best.copyFrom(this.trial);
    this.tell();
  }

  isOver(): boolean {
    const { budget, shouldStop } = this.options;
    const spent = 'iterations' in budget ? this.iterations >= budget.iterations : this.seconds() >= budget.seconds;
    return spent || (shouldStop?.() ?? false);
  }

  async cycle(): Promise<void> {
    const rounds = TUNE.cycle * Math.max(10, this.flat.sites);
    this.current.copyFrom(this.best);
    this.shake();
    const limited = rounds * TUNE.limitShare;
    const hot = TUNE.hot * this.best.money;
    for (let round = 0; round < rounds; round++) {
      if ((this.iterations & 15) === 0 && this.isOver()) break;
      if (round === Math.floor(limited)) this.mostRoutes.fill(this.flat.vehicles);
      this.round(hot * TUNE.cold ** (round / rounds));
      if ((this.iterations & 255) === 0) await this.adjust();
    }
    this.mostRoutes.fill(this.flat.vehicles);
    await this.adjust();
  }

  private round(temperature: number): void {
    const { trial, current, best, random } = this;
    this.iterations++;
    trial.copyFrom(current);
    const ruin = choose(this.weights, random());
    const sites = ruins[ruin](trial, 1 + pick(random, Math.min(TUNE.most, this.flat.sites)), random, this.near);
    this.bringBack(sites, random() < 0.5 ? 0 : TUNE.noise * random());
    const gain = this.price(current) - this.price(trial);
    if (gain > temperature * Math.log(random() + 1e-12)) {
      if (gain > 1e-3) this.weights[ruin] += 0.05;
      current.copyFrom(trial);
      if (isBetter(current, best)) {
        best.copyFrom(current);
        this.adjusted = false;
        this.tell();
      }
    }
    this.weights[ruin] = 0.2 + (this.weights[ruin] - 0.2) * 0.999;
    // Shortage is dear enough while the search keeps finding plans without it, and no dearer.
    this.shortPrice *= current.shortTotal > 0 ? 1.001 : 0.9995;
    if (this.options.clock() - this.told > 900) this.tell();
  }

  private bringBack(sites: number[], noise: number): void {
    const { trial, random, flat } = this;
    for (const site of sites) trial.remove(site);
    const steer = { shortPrice: this.shortPrice, noise, mostRoutes: this.mostRoutes };
    for (const site of inSomeOrder(sites, flat, random)) this.reinserter.reinsert(site, steer);
    const slots = new Set<number>();
    for (const site of sites)
      for (let day = 0; day < flat.days; day++) slots.add(trial.slotOf[site * flat.days + day]);
    slots.delete(-1);
    for (const slot of slots) shortenRoute(trial, slot);
  }

  private price(state: OpenState): number {
    return state.money + state.shortTotal * this.shortPrice;
  }

  /** Closes a route for most of the cycle, or opens one that saves the sites nearby a detour. */
  private shake(): void {
    const { flat, random, current, trial } = this;
    trial.copyFrom(current);
    const day = pick(random, flat.days);
    const used = [];
    for (let slot = day * flat.vehicles; slot < (day + 1) * flat.vehicles; slot++)
      if (current.stopCount[slot] > 0) used.push(slot);
    if (used.length > 0 && (used.length === flat.vehicles || random() < 0.6)) {
      this.mostRoutes[day] = used.length - 1;
      const slot = used[pick(random, used.length)];
      const first = slot * flat.sites;
      this.bringBack([...trial.stops.subarray(first, first + trial.stopCount[slot])], 0);
    } else this.openRoute(day);
    current.copyFrom(trial);
  }

  private openRoute(day: number): void {
    const { flat, random, trial } = this;
    let slot = day * flat.vehicles;
    while (trial.stopCount[slot] > 0) slot++;
    const around = this.near[pick(random, flat.sites)].slice(0, 2 + pick(random, 4));
    for (const site of around) trial.remove(site);
    for (const site of around) {
      const { opening, maximum } = flat.problem.sites[site];
      const drawn = flat.problem.sites[site].demand.slice(0, day).reduce((sum, units) => sum + units, 0);
      const fits = Math.min(maximum - Math.max(0, opening - drawn), flat.capacity - trial.load[slot]);
      const demand = flat.problem.sites[site].demand[day];
      if (opening - drawn >= 0 && fits > 0) trial.putIn(site, day, slot, trial.stopCount[slot], Math.min(fits, demand));
      trial.follow(site);
    }
  }

  /** Exact quantities for the best plan, once for each. */
  private async adjust(): Promise<void> {
    const { linear } = this.options;
    if (!linear || this.adjusted || this.best.shortTotal > 0) return;
    this.adjusted = true;
    const plan = await adjustQuantities(this.flat.problem, this.best.toPlan(), linear);
    if (!plan) return;
    const state = stateOfPlan(this.flat, plan);
    if (!isBetter(state, this.best)) return;
    this.best.copyFrom(state);
    this.current.copyFrom(state);
    this.tell();
  }

  result(): OpenSearchResult {
    const found = this.best.shortTotal === 0;
    return {
      plan: found ? this.best.toPlan() : null,
      cost: found ? this.best.money : Number.POSITIVE_INFINITY,
      iterations: this.iterations,
    };
  }

  private seconds(): number {
    return (this.options.clock() - this.began) / 1000;
  }

  private tell(): void {
    this.told = this.options.clock();
    const best = this.best.shortTotal === 0 ? this.best.money : Number.POSITIVE_INFINITY;
    this.options.onProgress?.({ best, iterations: this.iterations, seconds: this.seconds() });
  }
}

/** First the units short, then the money. */
function isBetter(a: OpenState, b: OpenState): boolean {
  return a.shortTotal < b.shortTotal || (a.shortTotal === b.shortTotal && a.money < b.money - 0.5);
}

/** Cents for a unit if each site got its own round trip for a day's demand. */
function usualUnitPrice({ problem, travel, places }: FlatOpenProblem): number {
  const prices = problem.sites.map(({ demand }, site) => {
    const daily = demand.reduce((sum, units) => sum + units, 0) / demand.length;
    return (travel[site + 1] + travel[(site + 1) * places]) / Math.max(1, daily);
  });
  return Math.max(1, ...prices);
}

function inSomeOrder(sites: number[], { problem, travel }: FlatOpenProblem, random: Random): number[] {
  const way = pick(random, 3);
  const rank = sites.map((site) => {
    if (way === 0) return random();
    if (way === 1) return -problem.sites[site].demand[0];
    return -travel[site + 1];
  });
  return sites.map((_, at) => at).sort((a, b) => rank[a] - rank[b]).map((at) => sites[at]);
}

function choose(weights: readonly number[], at: number): number {
  let left = at * weights.reduce((sum, weight) => sum + weight, 0);
  const chosen = weights.findIndex((weight) => {
    left -= weight;
    return left < 0;
  });
  return Math.max(0, chosen);
}
