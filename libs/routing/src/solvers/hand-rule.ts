import type { Plan } from '../plan.js';
import type { Problem } from '../problem.js';
import { emptyPlan } from './empty-plan.js';
import { flatten } from './search/flat-problem.js';
import { Insertion } from './search/insertion.js';
import { placeTrip } from './search/place-trip.js';
import { refill } from './search/refill.js';
import { SearchState } from './search/search-state.js';

/** A store that runs out this soon does not wait for a full payload. */
const SOON_DAYS = 2;

/**
 * Planning as it is done by hand: day by day, the store that runs out first gets the trip that brings packs
 * most cheaply, with the payload full unless it is urgent; as long as trips save more than they cost.
 * Instant, always feasible.
 */
export function handRule(problem: Problem): Plan {
  const state = new SearchState(flatten(problem), emptyPlan(problem));
  const insertion = new Insertion(state);
  const through = routesThrough(problem);
  refill(state, [...problem.stores.keys()]);
  for (let day = 0; day < problem.days; day++) {
    const waiting = new Set(problem.stores.keys());
    while (waiting.size > 0) {
      const store = earliestRunOut(state, waiting, day);
      if (store < 0) break;
      state.levels.refresh();
      if (!flyCheapest(state, insertion, { store, day, routes: through[store] })) waiting.delete(store);
    }
  }
  state.commit();
  return state.toPlan();
}

function routesThrough(problem: Problem): number[][] {
  const through: number[][] = problem.stores.map(() => []);
  problem.routes.forEach((route, r) => {
    for (const stop of route.stops) through[stop].push(r);
  });
  return through;
}

/** -1: none of them runs out. */
function earliestRunOut({ levels }: SearchState, stores: ReadonlySet<number>, day: number): number {
  let earliest = -1;
  let earliestDay = Number.POSITIVE_INFINITY;
  for (const store of stores) {
    const runsOut = levels.runsOutOn(store, day);
    if (runsOut < earliestDay) {
      earliest = store;
      earliestDay = runsOut;
    }
  }
  return earliest;
}

function flyCheapest(
  state: SearchState,
  insertion: Insertion,
  { store, day, routes }: { store: number; day: number; routes: readonly number[] },
): boolean {
  const { flat, hours } = state;
  const urgent = state.levels.runsOutOn(store, day) <= day + SOON_DAYS;
  const choices: { route: number; drops: Int32Array; centsPerPack: number }[] = [];
  for (const route of routes) {
    const condition = flat.conditionAt[route * flat.days + day];
    if (condition < 0 || flat.start[route] < 0) continue;
    const block = flat.blockHours[condition];
    const duty = flat.dutyHours[condition];
    if (!flat.vehiclesOf[flat.start[route]].some((vehicle) => hours.fits(vehicle, day, block, duty)))
      continue;
    if (insertion.value(route, day) <= 0) continue;
    const stops = flat.stops.subarray(flat.stopsAt[route], flat.stopsAt[route + 1]);
    const drops = insertion.drops.slice(0, stops.length);
    const packs = drops.reduce((sum, one) => sum + one, 0);
    const full = packs >= flat.legPacks[flat.legsAt[condition]];
    if (drops[stops.indexOf(store)] === 0 || !(full || urgent)) continue;
    choices.push({ route, drops, centsPerPack: flat.cost[condition] / packs + flat.packCost[route] });
  }
  choices.sort((a, b) => a.centsPerPack - b.centsPerPack || a.route - b.route);
  return choices.some(({ route, drops }) => placeTrip(state, route, day, drops) >= 0);
}
