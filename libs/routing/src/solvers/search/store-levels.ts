import type { Problem } from '../../problem.js';
import type { FlatProblem } from './flat-problem.js';

const TOLERANCE = 1e-9;

/**
 * Deliveries and levels of every store, what they cost, and what one to a few packs more on a day would
 * save: the gain tables. A change is recomputed from its day on, for its store only; tables wait for `refresh`.
 */
export class StoreLevels {
  /** Packs delivered, at store x days + day. */
  readonly delivered: Int32Array;
  /** Sum of the stores' costs (cents). */
  total = 0;
  /** Saving of `packs` more on a day, at (store x days + day) x (maxPacks + 1) + packs; -Infinity: they do not fit. */
  readonly gains: Float64Array;
  /** Greatest saving in a row of `gains`. */
  readonly topGain: Float64Array;
  readonly cost: Float64Array;

  private readonly levelBefore: Float64Array;
  private readonly costBefore: Float64Array;
  /** Level at the end of the last day. */
  private readonly closing: Float64Array;
  private readonly stale: Uint8Array;
  private readonly staleStores: number[] = [];
  private readonly days: number;
  private readonly packSize: number;
  private readonly row: number;

  private readonly arrivals: Float64Array;
  private readonly losses: Float64Array;
  private readonly demand: Float64Array;
  private readonly capacity: Float64Array;
  private readonly packsPerDay: Float64Array;
  private readonly stores: Problem['stores'];

  constructor(flat: FlatProblem) {
    const { stores, days, packSize } = flat.problem;
    this.stores = stores;
    this.days = days;
    this.packSize = packSize;
    this.row = flat.maxPacks + 1;
    const cells = stores.length * days;
    const byDay = (of: (store: Problem['stores'][number], day: number) => number) =>
      Float64Array.from({ length: cells }, (_, cell) => of(stores[Math.floor(cell / days)], cell % days));
    this.arrivals = byDay((store, day) => store.arrivals[day]);
    this.losses = byDay((store, day) => store.losses[day]);
    this.demand = byDay((store, day) => store.demand[day]);
    this.capacity = byDay((store, day) => store.capacity?.[day] ?? Number.POSITIVE_INFINITY);
    this.packsPerDay = byDay((store, day) => store.packsPerDay?.[day] ?? Number.POSITIVE_INFINITY);
    this.delivered = new Int32Array(cells);
    this.gains = new Float64Array(cells * this.row);
    this.topGain = new Float64Array(cells);
    this.levelBefore = new Float64Array(cells);
    this.costBefore = new Float64Array(cells);
    this.closing = new Float64Array(stores.length);
    this.cost = new Float64Array(stores.length);
    this.stale = new Uint8Array(stores.length);
    for (let store = 0; store < stores.length; store++) {
      this.levelBefore[store * days] = stores[store].opening;
      this.recompute(store, 0);
    }
  }

  /** Adds packs (negative: takes them back) to a store's deliveries of a day. */
  deliver(store: number, day: number, packs: number): void {
    this.delivered[store * this.days + day] += packs;
    this.recompute(store, day);
  }

  /** Saving of one pack less on a day: negative where the pack is worth something. */
  gainOfOneLess(store: number, day: number): number {
    return this.cost[store] - this.costWith(store, day, -1);
  }

  /** First day from `fromDay` on at whose end the store is below its minimum; the horizon's end where it
   * misses its end target only; Infinity: neither. */
  runsOutOn(store: number, fromDay: number): number {
    const { days, levelBefore } = this;
    const { minimum, endTarget } = this.stores[store];
    const base = store * days;
    for (let day = fromDay; day < days - 1; day++) if (levelBefore[base + day + 1] < minimum) return day;
    if (this.closing[store] < minimum) return days - 1;
    return this.closing[store] < endTarget ? days : Number.POSITIVE_INFINITY;
  }

  /** Brings the gain tables of all changed stores up to date. */
  refresh(): void {
    for (const store of this.staleStores) {
      this.stale[store] = 0;
      this.tabulate(store);
    }
    this.staleStores.length = 0;
  }

  private recompute(store: number, fromDay: number): void {
    const { days, levelBefore, costBefore } = this;
    const base = store * days;
    let cost = costBefore[base + fromDay];
    let level = levelBefore[base + fromDay];
    for (let day = fromDay; day < days; day++) {
      levelBefore[base + day] = level;
      costBefore[base + day] = cost;
      level += this.arrivals[base + day] + this.delivered[base + day] * this.packSize;
      cost += this.dayCost(store, day, level);
      level = this.levelAfter;
    }
    this.closing[store] = level;
    cost += this.endCost(store, level);
    this.total += cost - this.cost[store];
    this.cost[store] = cost;
    if (!this.stale[store]) {
      this.stale[store] = 1;
      this.staleStores.push(store);
    }
  }

  private tabulate(store: number): void {
    const { days, row, gains, topGain } = this;
    for (let day = 0; day < days; day++) {
      const at = (store * days + day) * row;
      gains[at] = 0;
      let top = 0;
      let packs = 1;
      for (; packs < row; packs++) {
        const gain = this.cost[store] - this.costWith(store, day, packs);
        if (gain === Number.NEGATIVE_INFINITY) break;
        gains[at + packs] = gain;
        if (gain > top) top = gain;
      }
      gains.fill(Number.NEGATIVE_INFINITY, at + packs, at + row);
      topGain[store * days + day] = top;
    }
  }

  /** Cost of the store with `packs` more on a day; Infinity where they do not fit. */
  private costWith(store: number, day: number, packs: number): number {
    const { days, levelBefore, costBefore, arrivals, delivered, capacity, packSize } = this;
    const base = store * days;
    const first = base + day;
    if (packs > 0 && delivered[first] + packs > this.packsPerDay[first]) return Number.POSITIVE_INFINITY;
    let cost = costBefore[first];
    let level = levelBefore[first] + packs * packSize;
    for (let cell = first; cell < base + days; cell++) {
      level += arrivals[cell] + delivered[cell] * packSize;
      if (packs > 0 && (cell === first || delivered[cell] > 0) && level > capacity[cell] + TOLERANCE) {
        return Number.POSITIVE_INFINITY;
      }
      cost += this.dayCost(store, cell - base, level);
      level = this.levelAfter;
      if (cell + 1 < base + days && level === levelBefore[cell + 1]) {
        return cost + this.cost[store] - costBefore[cell + 1];
      }
    }
    return cost + this.endCost(store, level);
  }

  private levelAfter = 0;

  /** Cost of one day from the level after deliveries; leaves the closing level in `levelAfter`. */
  private dayCost(store: number, day: number, stocked: number): number {
    const { floor, minimum, critical, cushion, prices } = this.stores[store];
    const cell = store * this.days + day;
    let level = stocked - this.losses[cell];
    let unmet = 0;
    if (level < 0) {
      unmet = -level;
      level = 0;
    }
    const demand = this.demand[cell];
    const drawn = level - floor >= demand ? demand : level > floor ? level - floor : 0;
    level -= drawn;
    unmet += demand - drawn;
    let cost = unmet * prices.unmet;
    if (level < cushion) cost += (cushion - level) * prices.belowCushion;
    if (level < minimum) cost += (minimum - level) * prices.belowMinimum;
    if (level < critical) cost += (critical - level) * prices.belowCritical;
    this.levelAfter = level;
    return cost;
  }

  private endCost(store: number, level: number): number {
    const { endTarget, prices } = this.stores[store];
    return level < endTarget ? (endTarget - level) * prices.belowEndTarget : 0;
  }
}
