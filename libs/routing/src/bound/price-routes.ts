import { eachRouteDay } from './flat-routes.js';
import type { Pricing } from './pricing.js';
import type { Pattern, Relaxation } from './relaxation.js';

/** Reduced costs below this are worth a column. */
const WORTH_A_COLUMN = -1e-7;

export interface Priced {
  /** The duals, with hours and booked routes so dear that no pattern has a reduced cost below zero. */
  readonly duals: Float64Array;
  /** Patterns that would improve the linear program: the best through each store on each day. */
  readonly attractive: Pattern[];
}

/**
 * Prices all patterns under the duals that `pricing` holds. Where one has a reduced cost below zero, an hour of its
 * vehicle group on that day is made dearer until none has: the duals are then good for a bound.
 */
export function priceRoutes(relaxation: Relaxation, pricing: Pricing, duals: Float64Array): Priced {
  const { problem, booked } = relaxation;
  const { flat } = pricing;
  const { days } = problem;
  const raised = Float64Array.from(duals);
  const perHour = new WorstPerHour(relaxation);
  const through = new BestThrough(problem.stores.length * days, 1);

  for (let route = 0; route < flat.count; route++) {
    for (let day = 0; day < days; day++) {
      const condition = flat.conditionAt[route * days + day];
      if (condition < 0) continue;
      const reducedCost = pricing.leastReducedCost(route, day, condition, 0);
      if (reducedCost >= 0) continue;
      const group = flat.group[route];
      if (group < 0) raised[booked[route - problem.routes.length]] += reducedCost;
      else
        perHour.offer(group * days + day, reducedCost, flat.blockHours[condition], flat.dutyHours[condition]);
      if (reducedCost < WORTH_A_COLUMN)
        for (let at = flat.stopsAt[route]; at < flat.stopsAt[route + 1]; at++)
          through.offer(flat.stops[at] * days + day, 0, route, reducedCost);
    }
  }
  perHour.raise(raised);
  return { duals: raised, attractive: through.patterns(days, pricing, 1) };
}

/** What a pack is worth to begin with, in costs of the cheapest way to bring one. */
const FIRST_GUESS = 1.15;

/** Kinds of vehicle at a home that each store is offered to begin with. */
const FIRST_GROUPS = 2;

/** Duals to begin with: a pack is worth about what the cheapest full route to the store costs per pack. */
export function guessedDuals({ problem, stores, program }: Relaxation, { flat }: Pricing): Float64Array {
  const worth = new Float64Array(problem.stores.length).fill(Number.POSITIVE_INFINITY);
  eachRouteDay(flat, problem.days, (route, _, condition) => {
    const packs = flat.legPacks[flat.legsAt[condition]];
    if (flat.group[route] < 0 || packs === 0) return;
    for (let at = flat.stopsAt[route]; at < flat.stopsAt[route + 1]; at++)
      worth[flat.stops[at]] = Math.min(worth[flat.stops[at]], flat.cost[condition] / packs);
  });
  const duals = new Float64Array(program.rows.length);
  stores.forEach(({ balance }, store) => {
    for (const row of balance ?? [])
      duals[row] = Number.isFinite(worth[store]) ? FIRST_GUESS * worth[store] : 0;
  });
  return duals;
}

/**
 * Patterns to begin with: the best through each store on each day under duals near the right ones. Without them the
 * first rounds only find out that unmet demand is dear.
 */
export function firstPatterns(relaxation: Relaxation, pricing: Pricing, duals: Float64Array): Pattern[] {
  const { problem } = relaxation;
  const { flat } = pricing;
  pricing.setDuals(duals);
  const through = new BestThrough(problem.stores.length * problem.days, relaxation.vehicles.length);
  eachRouteDay(flat, problem.days, (route, day, condition) => {
    if (flat.group[route] < 0) return;
    const reducedCost = pricing.leastReducedCost(route, day, condition);
    for (let at = flat.stopsAt[route]; at < flat.stopsAt[route + 1]; at++)
      through.offer(flat.stops[at] * problem.days + day, flat.group[route], route, reducedCost);
  });
  return through.patterns(problem.days, pricing, FIRST_GROUPS);
}

/** The worst ratio of reduced cost to block and to duty hours, by vehicle group and day. */
class WorstPerHour {
  private readonly block: Float64Array;
  private readonly duty: Float64Array;

  constructor(private readonly relaxation: Relaxation) {
    const cells = relaxation.vehicles.length * relaxation.problem.days;
    this.block = new Float64Array(cells);
    this.duty = new Float64Array(cells);
  }

  offer(cell: number, reducedCost: number, block: number, duty: number): void {
    if (reducedCost < this.block[cell] * block) this.block[cell] = reducedCost / block;
    if (reducedCost < this.duty[cell] * duty) this.duty[cell] = reducedCost / duty;
  }

  /** Makes block or duty hours dearer, whichever costs the bound less. */
  raise(duals: Float64Array): void {
    const { days } = this.relaxation.problem;
    this.relaxation.vehicles.forEach(({ blockHours, dutyHours, blockRow, dutyRow }, group) => {
      for (let day = 0; day < days; day++) {
        const cell = group * days + day;
        if (this.block[cell] * blockHours[day] >= this.duty[cell] * dutyHours[day])
          duals[blockRow[day]] += this.block[cell];
        else duals[dutyRow[day]] += this.duty[cell];
      }
    });
  }
}

/** The best routes through each store on each day, one of each vehicle group. */
class BestThrough {
  private readonly route: Int32Array;
  private readonly reducedCost: Float64Array;

  constructor(
    private readonly cells: number,
    private readonly groups: number,
  ) {
    this.route = new Int32Array(cells * groups).fill(-1);
    this.reducedCost = new Float64Array(cells * groups).fill(Number.POSITIVE_INFINITY);
  }

  offer(cell: number, group: number, route: number, reducedCost: number): void {
    const at = cell * this.groups + group;
    if (reducedCost >= this.reducedCost[at]) return;
    this.reducedCost[at] = reducedCost;
    this.route[at] = route;
  }

  /** With their best drops, of the `most` best groups at each store and day. */
  patterns(days: number, pricing: Pricing, most: number): Pattern[] {
    const chosen = new Map<number, Pattern>();
    for (let cell = 0; cell < this.cells; cell++) {
      const groups = Array.from({ length: this.groups }, (_, group) => cell * this.groups + group)
        .filter((at) => this.route[at] >= 0)
        .sort((a, b) => this.reducedCost[a] - this.reducedCost[b]);
      for (const at of groups.slice(0, most)) {
        const route = this.route[at];
        const day = cell % days;
        if (!chosen.has(route * days + day))
          chosen.set(route * days + day, { route, day, drops: pricing.bestDrops(route, day) });
      }
    }
    return [...chosen.values()];
  }
}
