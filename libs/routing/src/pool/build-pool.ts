import type { Route, RouteConditions } from '../problem.js';
import { withoutDominated } from './dominance.js';

/** A kind of vehicle at the base it works from. */
export interface Start {
  readonly kind: string;
  readonly source: number;
}

/** The carrier's own rules, as questions about one round; stores are indices into `problem.stores`. */
export interface PoolRules {
  readonly days: number;
  readonly starts: readonly Start[];
  /** Stores that may be visited. */
  readonly stops: readonly number[];
  /** Distance between two stores, in any one unit. */
  distance(from: number, to: number): number;
  /**
   * What decides the conditions of a round on a day (surface states along it, for example): equal keys
   * mean equal conditions. Null: the round cannot be made that day.
   */
  conditionsKey(start: Start, stops: readonly number[], day: number): string | number | null;
  /** Hours, cost and packs of the round on that day; null: no vehicle of the kind can make it. */
  conditionsOf(start: Start, stops: readonly number[], day: number): RouteConditions | null;
  /** Index of the crew group for the round; -1: nobody is needed. */
  crewGroupOf(start: Start, stops: readonly number[]): number;
  readonly maxStops: number;
  /** A next stop is one of this many nearest to the last one. */
  readonly neighbours: number;
  /** A round is at most this many times as long as the one to its farthest stop alone. */
  readonly detour: number;
}

/**
 * All rounds worth considering: single stops, and sequences of near stops within the detour that can set
 * down at least one pack at every stop. A round that another order of the same stops beats on every day is
 * left out (docs/model.md, "Pool").
 */
export function buildPool(rules: PoolRules): Route[] {
  const near = nearestStops(rules);
  return rules.starts.flatMap((start) => withoutDominated(routesOf(rules, start, near)));
}

function nearestStops(rules: PoolRules): Map<number, number[]> {
  const nearest = (from: number) =>
    rules.stops
      .filter((to) => to !== from)
      .sort((a, b) => rules.distance(from, a) - rules.distance(from, b) || a - b)
      .slice(0, rules.neighbours);
  return new Map(rules.stops.map((stop) => [stop, nearest(stop)]));
}

function routesOf(rules: PoolRules, start: Start, near: ReadonlyMap<number, readonly number[]>): Route[] {
  const routes: Route[] = [];
  const { distance } = rules;

  const extend = (stops: readonly number[], out: number, farthest: number) => {
    const last = stops[stops.length - 1];
    const length = out + distance(last, start.source);
    if (stops.length > 1 && length > rules.detour * 2 * farthest) return;
    const route = routeThrough(rules, start, stops);
    if (route) routes.push(route);
    if (stops.length === rules.maxStops) return;
    for (const next of near.get(last) ?? []) {
      if (stops.includes(next)) continue;
      extend([...stops, next], out + distance(last, next), Math.max(farthest, distance(start.source, next)));
    }
  };

  for (const first of rules.stops) {
    if (first === start.source) continue;
    const out = distance(start.source, first);
    extend([first], out, out);
  }
  return routes;
}

function routeThrough(rules: PoolRules, start: Start, stops: readonly number[]): Route | null {
  const conditions: RouteConditions[] = [];
  const known = new Map<string | number, number>();
  const conditionByDay = Array.from({ length: rules.days }, (_, day) => {
    const key = rules.conditionsKey(start, stops, day);
    if (key === null) return -1;
    const seen = known.get(key);
    if (seen !== undefined) return seen;
    const found = rules.conditionsOf(start, stops, day);
    const index = found && reachesAll(found) ? indexIn(conditions, asAboard(found)) : -1;
    known.set(key, index);
    return index;
  });
  if (conditions.length === 0) return null;
  const crewGroup = rules.crewGroupOf(start, stops);
  return { ...start, stops, end: start.source, conditions, conditionByDay, crewGroup };
}

/** What is aboard never grows along a route, so a leg's limit holds for the legs after it. */
function asAboard(conditions: RouteConditions): RouteConditions {
  let least = Number.POSITIVE_INFINITY;
  return { ...conditions, legPacks: conditions.legPacks.map((packs) => (least = Math.min(least, packs))) };
}

/** Where conditions like these stand in the list; they are added where none do. */
function indexIn(known: RouteConditions[], { legPacks, ...rest }: RouteConditions): number {
  const same = known.findIndex(
    (one) =>
      one.blockHours === rest.blockHours &&
      one.dutyHours === rest.dutyHours &&
      one.cost === rest.cost &&
      one.ownUse === rest.ownUse &&
      one.legPacks.every((packs, leg) => packs === legPacks[leg]),
  );
  return same >= 0 ? same : known.push({ ...rest, legPacks }) - 1;
}

/** At least one pack for every stop still ahead, on every leg; else a shorter round does the same for less. */
function reachesAll(conditions: RouteConditions): boolean {
  const stops = conditions.legPacks.length;
  return conditions.legPacks.every((packs, leg) => packs >= stops - leg);
}
