import { checkOpenPlan } from '../open-routes/check-open-plan.js';
import type { OpenPlan, OpenProblem } from '../open-routes/open-problem.js';

/**
 * Cost (cents) of the cheapest open plan, by trying every partition of the sites into routes in every order with
 * every quantity, day by day; Infinity where there is none. For two or three sites and days only.
 */
export function bruteForceOpen(problem: OpenProblem): number {
  const today = dayPlans(problem);
  let best = Number.POSITIVE_INFINITY;
  const extend = (day: number, routes: OpenPlan['routes']): void => {
    if (day === problem.days) {
      const { faults, cost } = checkOpenPlan(problem, { routes });
      if (faults.length === 0) best = Math.min(best, cost.total);
      return;
    }
    for (const plan of today) extend(day + 1, [...routes, ...plan.map((stops) => ({ day, stops }))]);
  };
  extend(0, []);
  return best;
}

type Stops = OpenPlan['routes'][number]['stops'];

/** Everything that can be travelled on one day, the fleet and the vehicles' capacity kept. */
function dayPlans({ sites, fleet }: OpenProblem): Stops[][] {
  let plans: Stops[][] = [[]];
  sites.forEach(({ maximum }, site) => {
    plans = plans.flatMap((plan) => {
      const placed: Stops[][] = [plan];
      for (let quantity = 0; quantity <= Math.min(maximum, fleet.capacity); quantity++) {
        const stop = { site, quantity };
        if (plan.length < fleet.vehicles) placed.push([...plan, [stop]]);
        plan.forEach((stops, route) => {
          const load = stops.reduce((sum, one) => sum + one.quantity, quantity);
          if (load > fleet.capacity) return;
          for (let at = 0; at <= stops.length; at++)
            placed.push(plan.with(route, [...stops.slice(0, at), stop, ...stops.slice(at)]));
        });
      }
      return placed;
    });
  });
  return plans;
}
