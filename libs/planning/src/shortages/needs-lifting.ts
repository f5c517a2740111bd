import { checkPlan, type Plan } from '@drumline/routing';
import { tripFlights } from '../flights/planned-trips.js';
import { routeKey } from '../problem/build-problem.js';
import { planFromFlights } from '../problem/plan-from-flights.js';
import type { BuiltProblem } from '../problem/problem-map.js';

/**
 * Whether a plan made without a limit breaks it. One that keeps it was found by looking longer, and shows nothing about
 * the limit. Pilots are found anew where the plan was made without them.
 */
export function needsLifting(built: BuiltProblem, relaxed: BuiltProblem, plan: Plan): boolean {
  const known = new Set(built.problem.routes.map(routeKey));
  const isStrange = plan.trips.some(
    ({ route, vehicle }) =>
      !known.has(routeKey(relaxed.problem.routes[route]!)) || vehicle >= built.problem.vehicles.length,
  );
  if (isStrange) return true;
  const flights = tripFlights(relaxed, plan).map((flight, index) => ({ ...flight, id: `trip ${index}` }));
  const again = { ...planFromFlights(built, flights), bookedDrops: plan.bookedDrops };
  return checkPlan(built.problem, again).faults.length > 0;
}
