import type { Pricing } from './pricing.js';
import type { Pattern, Relaxation } from './relaxation.js';

/** Reduced costs below this are worth a column. */
const WORTH_A_COLUMN = -1e-7;

export interface Priced {
  /** What the duals' value over all patterns adds to their value over the other columns; never above 0. */
  readonly correction: number;
  /** Patterns that would improve the linear program: the best through each store on each day. */
  readonly attractive: Pattern[];
}

/**
 * Prices all routes on all days. The patterns of a vehicle group on a day cost together no less than the worst ratio
 * of reduced cost to hours, times the hours of the group.
 */
export function priceRoutes(relaxation: Relaxation, pricing: Pricing): Priced {
  const { problem, vehicles } = relaxation;
  const { flat } = pricing;
  const { days } = problem;
  const perBlock = new Float64Array(vehicles.length * days);
  const perDuty = new Float64Array(vehicles.length * days);
  const through = new BestThrough(problem.stores.length * days);
  let correction = 0;

  for (let route = 0; route < flat.count; route++) {
    const group = flat.group[route];
    for (let day = 0; day < days; day++) {
      const condition = flat.conditionAt[route * days + day];
      if (condition < 0) continue;
      const reducedCost = pricing.leastReducedCost(route, day, condition, 0);
      if (reducedCost >= 0) continue;
      if (group < 0) correction += reducedCost;
      else {
        const at = group * days + day;
        perBlock[at] = Math.min(perBlock[at], reducedCost / flat.blockHours[condition]);
        perDuty[at] = Math.min(perDuty[at], reducedCost / flat.dutyHours[condition]);
      }
      if (reducedCost < WORTH_A_COLUMN)
        for (let at = flat.stopsAt[route]; at < flat.stopsAt[route + 1]; at++)
          through.offer(flat.stops[at] * days + day, route, reducedCost);
    }
  }
  vehicles.forEach(({ blockHours, dutyHours }, group) => {
    for (let day = 0; day < days; day++) {
      const at = group * days + day;
      correction += Math.max(times(perBlock[at], blockHours[day]), times(perDuty[at], dutyHours[day]));
    }
  });
  return { correction, attractive: through.patterns(days, pricing) };
}

/** Without hours there are no routes, however good one would be. */
const times = (ratio: number, hours: number) => (hours === 0 || ratio === 0 ? 0 : ratio * hours);

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
