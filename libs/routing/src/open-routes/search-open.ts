import type { SolveLinearProgram } from '../milp/linear-program.js';
import { pick, type Random, randomFrom } from '../random.js';
import { adjustQuantities } from './adjust-quantities.js';
import type { OpenPlan, OpenProblem } from './open-problem.js';
import { type FlatOpenProblem, flattenOpen, OpenState, stateOfPlan } from './open-state.js';
import { SiteReinserter } from './reinsert-site.js';
import { nearSites, ruins } from './ruin-sites.js';
import { RouteShortener } from './shorten-route.js';

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

// The first anneal: its share of the budget, and how hot it starts, as a share of the cost.
const FIRST_SHARE = 0.25;
const FIRST_HOT = 0.003;
// A later cycle: rounds per site, heat at its start; heat at the end of any, as a share of the start.
const ROUNDS_PER_SITE = 150;
const HOT = 0.001;
const COLD = 0.02;
/** How long a closed route stays closed, as a share of the cycle. */
const CLOSED_SHARE = 0.7;
/** Most sites taken off in a round. */
const MOST_SITES = 8;
const NOISE = 0.3;
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
  private readonly current: OpenState;
  private readonly trial: OpenState;
  private readonly best: OpenState;
  /** Where the next cycle starts. */
  private readonly home: OpenState;
  private readonly reinserter: SiteReinserter;
  private readonly shortener: RouteShortener;
  private readonly changed: Uint8Array;
  private readonly near: readonly number[][];
  private readonly weights = ruins.map(() => 1);
  private readonly mostRoutes: Int16Array;
  private shortPrice: number;
  private overPrice: number;
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
    this.home = new OpenState(flat);
    this.reinserter = new SiteReinserter(this.trial, this.random);
    this.shortener = new RouteShortener(flat);
    this.changed = new Uint8Array(flat.days * flat.vehicles);
    this.near = nearSites(this.trial);
    this.mostRoutes = new Int16Array(flat.days).fill(flat.vehicles);
    this.overPrice = usualUnitPrice(flat) / 4;
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
    const { current, home, best, random } = this;
    current.copyFrom(home);
    this.shake();
    const from = this.iterations;
    const rounds = ROUNDS_PER_SITE * Math.max(10, this.flat.sites);
    await this.anneal(HOT, () => (this.iterations - from) / rounds);
    const allowed = DRIFT * best.money * random();
    if (
      this.price(current) < this.price(home) + allowed &&
      this.price(current) < this.price(best) + FAR * best.money
    )
      home.copyFrom(current);
    else if (random() < 0.1) home.copyFrom(best);
  }

  private async anneal(hotness: number, progressOf: () => number): Promise<void> {
    const hot = hotness * this.best.money;
    let temperature = hot;
    for (let progress = 0; progress < 1 && !this.isOver(); ) {
      if (progress > CLOSED_SHARE) this.mostRoutes.fill(this.flat.vehicles);
      this.round(temperature);
      if ((this.iterations & 15) !== 0) continue;
      progress = progressOf();
      temperature = hot * COLD ** progress;
    }
    this.mostRoutes.fill(this.flat.vehicles);
    if (this.price(this.current) < this.best.money * (1 + FAR)) await this.adjust(this.current);
    if (!this.adjusted) await this.adjust(this.best);
    this.adjusted = true;
  }

  private round(temperature: number): void {
    const { trial, current, best, random } = this;
    this.iterations++;
    trial.copyFrom(current);
    const ruin = choose(this.weights, random());
    const sites = ruins[ruin](
      trial,
      1 + pick(random, Math.min(MOST_SITES, this.flat.sites)),
      random,
      this.near,
    );
    this.bringBack(sites, random() < 0.5 ? 0 : NOISE * random());
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
    this.overPrice *= current.overTotal > 0 ? 1.001 : 0.9985;
    if ((this.iterations & 15) === 0 && this.options.clock() - this.told > 900) this.tell();
  }

  private bringBack(sites: number[], noise: number, freeOpening = -1): void {
    const { trial, random, flat } = this;
    for (const site of sites) trial.remove(site);
    const { shortPrice, overPrice } = this;
    const steer = { shortPrice, overPrice, noise, mostRoutes: this.mostRoutes, freeOpening };
    for (const site of inSomeOrder(sites, flat, random)) this.reinserter.reinsert(site, steer);
    for (let slot = 0; slot < this.changed.length; slot++) this.changed[slot] = 0;
    for (const site of sites)
      for (let visit = site * flat.days; visit < (site + 1) * flat.days; visit++)
        if (trial.slotOf[visit] >= 0) this.changed[trial.slotOf[visit]] = 1;
    for (let slot = 0; slot < this.changed.length; slot++)
      if (this.changed[slot] === 1) this.shortener.shorten(trial, slot);
  }

  private price(state: OpenState): number {
    return state.money + state.shortTotal * this.shortPrice + state.overTotal * this.overPrice;
  }

  /** Closes a route for most of the cycle, opens one, or both; the sites around come back as they fit best. */
  private shake(): void {
    const { flat, random, current, trial } = this;
    trial.copyFrom(current);
    const kind = random();
    const sites = new Set<number>();
    const closed = kind < 0.75 ? this.pickDay((routes) => routes > 0) : -1;
    const opened = kind > 0.4 ? this.pickDay((routes, day) => routes < flat.vehicles && day !== closed) : -1;
    if (closed >= 0) {
      const slots = this.usedSlots(closed);
      this.mostRoutes[closed] = slots.length - 1;
      const slot = slots[pick(random, slots.length)];
      const first = slot * flat.sites;
      for (const site of trial.stops.subarray(first, first + trial.stopCount[slot])) sites.add(site);
    }
    if (opened >= 0) {
      const around = this.near[pick(random, flat.sites)];
      for (const site of around.slice(0, 2 + pick(random, Math.ceil(flat.sites / 2)))) sites.add(site);
    }
    this.bringBack([...sites], 0, opened);
    current.copyFrom(trial);
  }

  /** Any day whose number of routes is as asked; -1: none is. */
  private pickDay(suits: (routes: number, day: number) => boolean): number {
    const days = [...this.mostRoutes.keys()].filter((day) => suits(this.usedSlots(day).length, day));
    return days.length === 0 ? -1 : days[pick(this.random, days.length)];
  }

  private usedSlots(day: number): number[] {
    const { vehicles } = this.flat;
    return Array.from({ length: vehicles }, (_, at) => day * vehicles + at).filter(
      (slot) => this.trial.stopCount[slot] > 0,
    );
  }

  /** Exact quantities for the routes of a state, which can mend a shortage or an overload; kept where that is a new best. */
  private async adjust(state: OpenState): Promise<void> {
    const { linear } = this.options;
    if (!linear) return;
    const plan = await adjustQuantities(this.flat.problem, state.toPlan(), linear);
    if (!plan) return;
    const adjusted = stateOfPlan(this.flat, plan);
    if (!isBetter(adjusted, this.best)) return;
    this.best.copyFrom(adjusted);
    this.current.copyFrom(adjusted);
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

const isFeasible = (state: OpenState): boolean => state.shortTotal === 0 && state.overTotal === 0;

/** First the units short or overloaded, then the money. */
function isBetter(a: OpenState, b: OpenState): boolean {
  const wrong = a.shortTotal + a.overTotal - b.shortTotal - b.overTotal;
  return wrong < 0 || (wrong === 0 && a.money < b.money - 0.5);
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
  return sites
    .map((_, at) => at)
    .sort((a, b) => rank[a] - rank[b])
    .map((at) => sites[at]);
}

function choose(weights: readonly number[], at: number): number {
  let left = at * weights.reduce((sum, weight) => sum + weight, 0);
  const chosen = weights.findIndex((weight) => {
    left -= weight;
    return left < 0;
  });
  return Math.max(0, chosen);
}
