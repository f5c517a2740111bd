import type { OpenProblem } from './open-problem.js';

/** An open problem in flat arrays: what the inner loops of the search read. */
export interface FlatOpenProblem {
  readonly problem: OpenProblem;
  readonly days: number;
  readonly sites: number;
  readonly vehicles: number;
  readonly capacity: number;
  /** Cents from place a to place b at `a * places + b`. */
  readonly travel: Float64Array;
  readonly places: number;
  /** Units drawn at `site * days + day`. */
  readonly demand: Int32Array;
  /** Base stock that can have been loaded by each day, nothing delivered. */
  readonly readyByDay: Float64Array;
}

export function flattenOpen(problem: OpenProblem): FlatOpenProblem {
  const { days, sites, base, fleet, travelCost } = problem;
  const readyByDay = new Float64Array(days).fill(base.opening);
  for (let day = 1; day < days; day++) readyByDay[day] = readyByDay[day - 1] + base.production[day - 1];
  return {
    problem,
    days,
    sites: sites.length,
    vehicles: fleet.vehicles,
    capacity: fleet.capacity,
    travel: Float64Array.from(travelCost.flat()),
    places: travelCost.length,
    demand: Int32Array.from(sites.flatMap((site) => site.demand)),
    readyByDay,
  };
}

/** Cents for a unit if each site got its own round trip for a day's demand. */
export function usualUnitPrice({ problem, travel, places }: FlatOpenProblem): number {
  const prices = problem.sites.map(({ demand }, site) => {
    const daily = demand.reduce((sum, units) => sum + units, 0) / demand.length;
    return (travel[site + 1] + travel[(site + 1) * places]) / Math.max(1, daily);
  });
  return Math.max(1, ...prices);
}
