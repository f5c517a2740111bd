import type { Outcome, Plan, Problem } from '@drumline/routing';
import type { CacheProjection } from '@drumline/stock';
import { plannedTrips, tripFlights } from '../flights/planned-trips.js';
import { projectScenario } from '../flights/project.js';
import type { BlockingLimit, BuiltProblem } from '../problem/problem-map.js';
import { type Shortfall, severityOf, shortageOf } from './find-shortages.js';
import { needsLifting } from './needs-lifting.js';
import { relaxations } from './relaxations.js';
import { startFrom } from './start-from.js';

/** Solves a problem; "quick" asks for a good answer in little time, from a plan where there is one. */
export type Solver = (problem: Problem, effort: 'full' | 'quick', from?: Plan) => Promise<Outcome>;

/** A shortage with the limits that, each relaxed alone, would spare it. Empty: none would; null: nobody asked. */
export interface BlockedShortfall extends Shortfall {
  readonly by: readonly BlockingLimit[] | null;
}

/**
 * Which limit stands in the way of each shortage, found by solving again without one limit at a time, from the plan on,
 * not guessed. A plan that keeps the limit shows nothing about it. A shortage counts as spared where the stock worked out anew has none of it until the plan's own ends,
 * and the other caches together are no shorter for it. A shortage at the opening, or at a place that no route reaches,
 * is beyond every limit; one of the end target is a matter of price. No more limits are tried once `isOver` says that
 * the time is up: what no limit tried so far spares was then not asked to the end.
 */
export async function findBlockers(
  built: BuiltProblem,
  plan: Plan,
  caches: readonly CacheProjection[],
  shortfalls: readonly Shortfall[],
  solver: Solver,
  isOver: () => boolean,
): Promise<readonly BlockedShortfall[]> {
  const reached = new Set(built.problem.routes.flatMap(({ stops }) => stops));
  const open = shortfalls.filter(
    ({ day, place, level }) =>
      day > 0 && level !== 'short of the end target' && reached.has(built.map.storeOf.get(place)!),
  );
  const blocked = new Map<Shortfall, BlockingLimit[]>(open.map((shortfall) => [shortfall, []]));
  const flights = tripFlights(built, plan).map((flight, index) => ({ ...flight, id: `trip ${index}` }));
  let untried = false;
  for (const [limit, relax] of open.length === 0 ? [] : Object.entries(relaxations)) {
    untried = isOver();
    if (untried) break;
    const relaxed = relax(built, flights);
    const outcome = await solver(relaxed.problem, 'quick', startFrom(plan, built.problem, relaxed.problem));
    if (outcome.status !== 'solved' || !needsLifting(built, relaxed, outcome.plan)) continue;
    const now = projectScenario(relaxed.scenario, plannedTrips(relaxed, outcome.plan));
    for (const shortfall of open)
      if (isSpared(shortfall, caches, now)) blocked.get(shortfall)!.push(limit as BlockingLimit);
  }
  return shortfalls.map((shortfall) => {
    const by = blocked.get(shortfall) ?? [];
    return { ...shortfall, by: untried && by.length === 0 ? null : by };
  });
}

/** No day of the shortage is as bad, and the other caches together are no shorter. */
function isSpared(
  { place, day }: Shortfall,
  before: readonly CacheProjection[],
  after: readonly CacheProjection[],
): boolean {
  const cacheOf = (caches: readonly CacheProjection[]) => caches.find((cache) => cache.place === place)!;
  const [was, is] = [cacheOf(before), cacheOf(after)];
  const severity = severityOf(was, day);
  const goesOn = [...was.usable.keys()].slice(day);
  const ends = goesOn.findIndex((each) => severityOf(was, each) < severity);
  const days = ends < 0 ? goesOn : goesOn.slice(0, ends);
  const others = (caches: readonly CacheProjection[]) =>
    shortageOf(caches.filter((cache) => cache.place !== place));
  return days.every((each) => severityOf(is, each) < severity) && others(after) <= others(before);
}
