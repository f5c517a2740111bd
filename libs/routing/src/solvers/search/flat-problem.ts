import type { Problem, Route } from '../../problem.js';

/**
 * The problem in typed arrays for the search. Booked routes follow the real ones as routes that cost
 * nothing, have no start and can be travelled on their own day only.
 */
export interface FlatProblem {
  readonly problem: Problem;
  readonly days: number;
  /** Most packs aboard any route. */
  readonly maxPacks: number;
  readonly maxStops: number;
  /** Routes from here on are booked ones. */
  readonly firstBooked: number;
  /** Stops of route r: `stops[stopsAt[r]]` up to `stops[stopsAt[r + 1]]`. */
  readonly stopsAt: Int32Array;
  readonly stops: Int32Array;
  readonly source: Int32Array;
  readonly packCost: Float64Array;
  readonly crewGroup: Int32Array;
  /** Kind and home that a route needs, as an index into `vehiclesOf`; -1: booked, or no such vehicle. */
  readonly start: Int32Array;
  readonly vehiclesOf: readonly (readonly number[])[];
  /** Condition of route r on day d at r x days + d; -1: cannot be travelled. */
  readonly conditionAt: Int32Array;
  readonly blockHours: Float64Array;
  readonly dutyHours: Float64Array;
  readonly cost: Float64Array;
  readonly ownUse: Float64Array;
  /** Leg packs of condition c start at `legsAt[c]`; never more on a later leg than on an earlier one. */
  readonly legsAt: Int32Array;
  readonly legPacks: Int32Array;
  /** Real routes that some vehicle can travel, by their first stop. */
  readonly routesFirstTo: readonly Int32Array[];
  /** Equal for routes with the same stops in the same order. */
  readonly sequence: Int32Array;
}

/** Typed arrays of the problem. `allowed`: the routes that may be flown anew; all where it is not given. */
export function flatten(problem: Problem, allowed?: readonly number[]): FlatProblem {
  const routes = [...problem.routes, ...problem.booked.map((one) => bookedAsRoute(one, problem.days))];
  const starts = indexStarts(problem);
  const start = Int32Array.from(routes, (route, r) =>
    r < problem.routes.length ? (starts.indexOf.get(startKey(route)) ?? -1) : -1,
  );
  const conditions = routes.flatMap((route) => route.conditions);
  const firstCondition = offsets(routes.map((route) => route.conditions.length));
  const conditionAt = new Int32Array(routes.length * problem.days);
  routes.forEach((route, r) => {
    route.conditionByDay.forEach((index, day) => {
      conditionAt[r * problem.days + day] = index < 0 ? -1 : firstCondition[r] + index;
    });
  });

  return {
    problem,
    days: problem.days,
    maxPacks: conditions.reduce((most, one) => Math.max(most, one.legPacks[0]), 0),
    maxStops: routes.reduce((most, route) => Math.max(most, route.stops.length), 1),
    firstBooked: problem.routes.length,
    stopsAt: offsets(routes.map((route) => route.stops.length)),
    stops: Int32Array.from(routes.flatMap((route) => route.stops)),
    source: Int32Array.from(routes, (route) => route.source),
    packCost: Float64Array.from(routes, (route) => problem.stores[route.source].supply?.packCost ?? 0),
    crewGroup: Int32Array.from(routes, (route) => (problem.crews.length === 0 ? -1 : route.crewGroup)),
    start,
    vehiclesOf: starts.vehiclesOf,
    conditionAt,
    blockHours: Float64Array.from(conditions, (one) => one.blockHours),
    dutyHours: Float64Array.from(conditions, (one) => one.dutyHours),
    cost: Float64Array.from(conditions, (one) => one.cost),
    ownUse: Float64Array.from(conditions, (one) => one.ownUse),
    legsAt: offsets(conditions.map((one) => one.legPacks.length)),
    legPacks: Int32Array.from(conditions.flatMap((one) => runningMinimum(one.legPacks))),
    routesFirstTo: routesFirstTo(problem, start, allowed ?? problem.routes.keys()),
    sequence: sequences(routes),
  };
}

const startKey = (route: Route) => `${route.kind} ${route.source}`;

function bookedAsRoute(booked: Problem['booked'][number], days: number): Route {
  const { source, stops, legPacks, blockHours, dutyHours, crewGroup } = booked;
  return {
    kind: '',
    source,
    stops,
    end: source,
    conditions: [{ blockHours, dutyHours, cost: 0, legPacks, ownUse: 0 }],
    conditionByDay: Array.from({ length: days }, (_, day) => (day === booked.day ? 0 : -1)),
    crewGroup,
  };
}

function indexStarts(problem: Problem) {
  const indexOf = new Map<string, number>();
  const vehiclesOf: number[][] = [];
  problem.vehicles.forEach((vehicle, v) => {
    const key = `${vehicle.kind} ${vehicle.home}`;
    const index = indexOf.get(key) ?? vehiclesOf.push([]) - 1;
    indexOf.set(key, index);
    vehiclesOf[index].push(v);
  });
  return { indexOf, vehiclesOf };
}

/** Where each of the lists begins when they are laid end to end; one more entry for the end. */
function offsets(lengths: readonly number[]): Int32Array {
  const at = new Int32Array(lengths.length + 1);
  lengths.forEach((length, i) => {
    at[i + 1] = at[i] + length;
  });
  return at;
}

/** What is aboard never grows along a route, so a leg's limit holds for the legs after it. */
function runningMinimum(legPacks: readonly number[]): number[] {
  let least = Number.POSITIVE_INFINITY;
  return legPacks.map((packs) => {
    least = Math.min(least, packs);
    return least;
  });
}

function routesFirstTo(problem: Problem, start: Int32Array, allowed: Iterable<number>): Int32Array[] {
  const firstTo: number[][] = problem.stores.map(() => []);
  for (const r of allowed) if (start[r] >= 0) firstTo[problem.routes[r].stops[0]].push(r);
  return firstTo.map((routes) => Int32Array.from(routes));
}

function sequences(routes: readonly Route[]): Int32Array {
  const known = new Map<string, number>();
  return Int32Array.from(routes, (route) => {
    const key = route.stops.join();
    const index = known.get(key) ?? known.size;
    known.set(key, index);
    return index;
  });
}
