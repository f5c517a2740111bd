import type { Plan, Problem } from '@drumline/routing';
import { routeKey } from '../problem/build-problem.js';

/**
 * A plan of a problem as a plan of the same problem with a limit lifted: the same trips on the routes of the same name,
 * the same drops, and nobody aboard where nobody is needed any more. Stores, vehicles and booked routes are the same.
 */
export function startFrom(plan: Plan, problem: Problem, relaxed: Problem): Plan {
  const routeOf = new Map(relaxed.routes.map((route, index) => [routeKey(route), index]));
  const crewOf = (crew: number): number => (relaxed.crews.length === 0 ? -1 : crew);
  return {
    ...plan,
    trips: plan.trips.map((trip) => ({
      ...trip,
      route: routeOf.get(routeKey(problem.routes[trip.route]!))!,
      crew: crewOf(trip.crew),
    })),
    bookedCrews: plan.bookedCrews.map(crewOf),
  };
}
