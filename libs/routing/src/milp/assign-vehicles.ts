import type { Problem } from '../problem.js';
import { VehicleHours } from '../solvers/search/vehicle-hours.js';

export interface UnassignedTrip {
  readonly route: number;
  readonly day: number;
}

/** Tries before giving up: enough for any day of a small fleet, and over at once. */
const MOST_TRIES = 200_000;

/**
 * A vehicle for each trip within its hours, visits of the standing plan kept where they can be; null: none was
 * found in a bounded exhaustive search.
 */
export function assignVehicles(problem: Problem, trips: readonly UnassignedTrip[]): number[] | null {
  const hours = new VehicleHours(problem);
  const assigned = new Array<number>(trips.length).fill(-1);
  const conditions = trips.map(({ route, day }) => conditionsOf(problem, route, day));
  const order = [...trips.keys()].sort(
    (a, b) => trips[a].day - trips[b].day || conditions[b].dutyHours - conditions[a].dutyHours || a - b,
  );
  let tries = 0;

  const place = (at: number): boolean => {
    if (at === order.length) return true;
    const trip = trips[order[at]];
    const { blockHours, dutyHours } = conditions[order[at]];
    for (const vehicle of inOrderOfPreference(problem, trip, hours)) {
      if (!hours.fits(vehicle, trip.day, blockHours, dutyHours)) continue;
      if (++tries > MOST_TRIES) return false;
      hours.use(vehicle, trip.day, blockHours, dutyHours);
      assigned[order[at]] = vehicle;
      if (place(at + 1)) return true;
      hours.use(vehicle, trip.day, -blockHours, -dutyHours);
    }
    return false;
  };
  return place(0) ? assigned : null;
}

/** Vehicles of the route's kind at its source: first the one of a standing visit, then the one that has flown least. */
function inOrderOfPreference(
  problem: Problem,
  { route, day }: UnassignedTrip,
  hours: VehicleHours,
): number[] {
  const { kind, source, stops } = problem.routes[route];
  const key = stops.join();
  const kept = (vehicle: number) =>
    problem.standing.some(
      (visit) => visit.vehicle === vehicle && visit.day === day && visit.stops.join() === key,
    );
  const free = (vehicle: number) => hours.freeDuty[vehicle * problem.days + day];
  return [...problem.vehicles.keys()]
    .filter((vehicle) => problem.vehicles[vehicle].kind === kind && problem.vehicles[vehicle].home === source)
    .sort((a, b) => Number(kept(b)) - Number(kept(a)) || free(b) - free(a) || a - b);
}

export function conditionsOf(problem: Problem, route: number, day: number) {
  const { conditions, conditionByDay } = problem.routes[route];
  return conditions[conditionByDay[day]];
}
