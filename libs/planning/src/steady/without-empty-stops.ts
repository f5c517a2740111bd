import { checkPlan, costOf, type Plan, type Problem, type Trip } from '@drumline/routing';

/**
 * A plan whose trips land nowhere for nothing: a search that is stopped early leaves stops at which no pack is set down,
 * and each is a landing, hours and money without a purpose. A trip goes by the cheapest route of the problem over its
 * other stops that breaks no rule, and is left out where it sets nothing down at all. Booked routes are travelled anyway.
 */
export function withoutEmptyStops(problem: Problem, plan: Plan): Plan {
  const laden = { ...plan, trips: plan.trips.filter(({ drops }) => drops.some((packs) => packs > 0)) };
  return [...laden.trips.keys()].reduce<Plan>((better, at) => shortened(problem, better, at), laden);
}

function shortened(problem: Problem, plan: Plan, at: number): Plan {
  const trip = plan.trips[at]!;
  if (trip.drops.every((packs) => packs > 0)) return plan;
  const candidates = shorterTrips(problem, trip)
    .map((shorter) => ({ ...plan, trips: plan.trips.with(at, shorter) }))
    .filter((candidate) => checkPlan(problem, candidate).faults.length === 0)
    .sort((one, other) => costOf(problem, one).total - costOf(problem, other).total);
  return candidates[0] ?? plan;
}

/** The trip over those of its stops at which it sets something down, in any order. */
function shorterTrips({ routes }: Problem, trip: Trip): readonly Trip[] {
  const { kind, source, end, stops } = routes[trip.route]!;
  const dropAt = new Map(stops.map((stop, index) => [stop, trip.drops[index]!]));
  const isServed = (stop: number): boolean => (dropAt.get(stop) ?? 0) > 0;
  const served = stops.filter(isServed).length;
  return routes.flatMap((route, index) => {
    const isSame = route.kind === kind && route.source === source && route.end === end;
    if (!isSame || route.stops.length !== served || !route.stops.every(isServed)) return [];
    if (route.conditionByDay[trip.day]! < 0) return [];
    return [{ ...trip, route: index, drops: route.stops.map((stop) => dropAt.get(stop)!) }];
  });
}
