import type { Route, RouteConditions } from '../problem.js';

/**
 * The routes of one start without those that another order of the same stops beats: no more hours, cost
 * and own use, and room for whatever the other can set down, on every day that the other can be travelled.
 */
export function withoutDominated(routes: readonly Route[]): Route[] {
  const bySet = new Map<string, Route[]>();
  for (const route of routes) {
    const key = [...route.stops].sort((a, b) => a - b).join();
    const orders = bySet.get(key);
    if (orders) orders.push(route);
    else bySet.set(key, [route]);
  }
  return [...bySet.values()].flatMap((orders) => undominated(orders));
}

function undominated(orders: readonly Route[]): Route[] {
  const kept: Route[] = [];
  for (const route of orders) {
    if (kept.some((other) => beats(other, route))) continue;
    for (let i = kept.length - 1; i >= 0; i--) if (beats(route, kept[i])) kept.splice(i, 1);
    kept.push(route);
  }
  return kept;
}

function beats(a: Route, b: Route): boolean {
  if (a.crewGroup !== b.crewGroup) return false;
  const places = a.stops.map((stop) => b.stops.indexOf(stop));
  return b.conditionByDay.every((indexB, day) => {
    if (indexB < 0) return true;
    const indexA = a.conditionByDay[day];
    return indexA >= 0 && better(a.conditions[indexA], b.conditions[indexB], places);
  });
}

/** `places[i]` is where stop i of `a` comes in `b`. */
function better(a: RouteConditions, b: RouteConditions, places: readonly number[]): boolean {
  if (a.blockHours > b.blockHours || a.dutyHours > b.dutyHours) return false;
  if (a.cost > b.cost || a.ownUse > b.ownUse) return false;
  return a.legPacks.every((packs, leg) => {
    const firstInB = Math.min(...places.slice(leg));
    return packs >= Math.min(...b.legPacks.slice(0, firstInB + 1));
  });
}
