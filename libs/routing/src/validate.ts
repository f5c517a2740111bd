import { bookCrews } from './crews/book-crews.js';
import type { BookedRoute, Problem, Route, Store } from './problem.js';

/** Why the problem cannot be planned, a sentence each: figures that do not fit together, booked routes without a crew. */
export function validate(problem: Problem): string[] {
  const reasons = [
    ...problem.stores.flatMap((store) => storeReasons(problem, store)),
    ...problem.vehicles.flatMap((vehicle) => [
      ...byDay(problem, `vehicle ${vehicle.id}`, { block: vehicle.blockHours, duty: vehicle.dutyHours }),
      ...known(problem, `vehicle ${vehicle.id}`, [vehicle.home]),
    ]),
    ...problem.routes.flatMap((route, r) => routeReasons(problem, route, `route ${r}`)),
    ...problem.booked.flatMap((route) => bookedReasons(problem, route)),
    ...problem.crews.flatMap((crew) =>
      byDay(problem, `crew ${crew.id}`, {
        groups: crew.groupsByDay,
        block: crew.blockHours,
        duty: crew.dutyHours,
      }),
    ),
  ];
  return reasons.length > 0 ? reasons : crewReasons(problem);
}

function storeReasons(problem: Problem, store: Store): string[] {
  const { capacity, packsPerDay, supply, arrivals, losses, demand } = store;
  return byDay(problem, `store ${store.id}`, {
    arrivals,
    losses,
    demand,
    ...(capacity && { capacity }),
    ...(packsPerDay && { packsPerDay }),
    ...(supply && { packsByDay: supply.packsByDay }),
    ...(supply?.unitsByDay && { unitsByDay: supply.unitsByDay }),
  });
}

function routeReasons(problem: Problem, route: Route, where: string): string[] {
  const legs = route.conditions.every(({ legPacks }) => legPacks.length === route.stops.length);
  const days = route.conditionByDay.every((index) => index >= -1 && index < route.conditions.length);
  return [
    ...byDay(problem, where, { conditions: route.conditionByDay }),
    ...known(problem, where, [route.source, route.end, ...route.stops]),
    ...once(where, route.stops),
    ...(legs ? [] : [`${where}: leg packs and stops differ in number; give one figure a stop.`]),
    ...(days ? [] : [`${where}: a day names conditions that are not there; use -1 for a day without.`]),
    ...(problem.stores[route.source]?.supply
      ? []
      : [`${where}: its source supplies nothing; give the store a supply.`]),
  ];
}

function bookedReasons(problem: Problem, route: BookedRoute): string[] {
  const where = `booked route ${route.id}`;
  const inside = route.day >= 0 && route.day < problem.days;
  return [
    ...known(problem, where, [route.source, ...route.stops]),
    ...once(where, route.stops),
    ...(inside ? [] : [`${where}: day ${route.day} is outside the horizon; leave the route out.`]),
    ...(route.legPacks.length === route.stops.length
      ? []
      : [`${where}: leg packs and stops differ in number; give one figure a stop.`]),
  ];
}

function crewReasons(problem: Problem): string[] {
  const booked = bookCrews(problem);
  if ('crews' in booked) return [];
  return booked.shortDays.map((day) => {
    const routes = problem.booked.filter((route) => route.day === day && route.crewGroup >= 0);
    const names = routes.map((route) => route.id).join(', ');
    return `Day ${day}: no crews with the hours for the booked routes ${names} together; free a crew or move one.`;
  });
}

function byDay(problem: Problem, where: string, lists: Record<string, readonly unknown[]>): string[] {
  return Object.entries(lists)
    .filter(([, list]) => list.length !== problem.days)
    .map(
      ([name, list]) =>
        `${where}: ${name} has ${list.length} days, the horizon ${problem.days}; give one a day.`,
    );
}

function known(problem: Problem, where: string, stores: readonly number[]): string[] {
  return stores
    .filter((store) => !problem.stores[store])
    .map((store) => `${where}: store ${store} does not exist; name one of ${problem.stores.length}.`);
}

function once(where: string, stops: readonly number[]): string[] {
  return new Set(stops).size === stops.length
    ? []
    : [`${where}: it stops twice at one store; use two routes.`];
}
