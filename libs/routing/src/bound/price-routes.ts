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
  const through = new BestThrough(problem.stores.length * days);

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
          through.offer(flat.stops[at] * days + day, route, reducedCost);
    }
  }
  perHour.raise(raised);
  return { duals: raised, attractive: through.patterns(days, pricing) };
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

/** The best route through each store on each day. */
class BestThrough {
  private readonly route: Int32Array;
  private readonly reducedCost: Float64Array;

  constructor(cells: number) {
    this.route = new Int32Array(cells).fill(-1);
    this.reducedCost = new Float64Array(cells);
  }

  offer(cell: number, route: number, reducedCost: number): void {
    if (reducedCost >= this.reducedCost[cell]) return;
    this.reducedCost[cell] = reducedCost;
    this.route[cell] = route;
  }

  patterns(days: number, pricing: Pricing): Pattern[] {
    const chosen = new Map<number, Pattern>();
    this.route.forEach((route, cell) => {
      const day = cell % days;
      if (route >= 0 && !chosen.has(route * days + day))
        chosen.set(route * days + day, { route, day, drops: pricing.bestDrops(route, day) });
    });
    return [...chosen.values()];
  }
}
