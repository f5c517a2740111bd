import { storeCourse } from '@drumline/routing';
import type { EndTarget } from '../flight-plan.js';
import type { Scenario } from '../scenario.js';
import { cacheStores } from './cache-stores.js';

/** What each cache is to hold at the end, in litres, in the order of the scenario's caches. */
export function endTargets(scenario: Scenario, mode: EndTarget): readonly number[] {
  switch (mode) {
    case 'minimum':
      return scenario.caches.map(({ minimumLitres }) => minimumLitres);
    case 'operator':
      return scenario.caches.map(({ endTargetLitres, minimumLitres }) => endTargetLitres ?? minimumLitres);
    case 'hand plan':
      return handPlanClosing(scenario);
  }
}

/** The hand plan's drums come in as if its flights were frozen, in place of what has been flown since. */
function handPlanClosing(scenario: Scenario): readonly number[] {
  const nothingMore = new Array<number>(scenario.days).fill(0);
  return cacheStores(scenario, scenario.handPlan).map(
    (store) => storeCourse(store, nothingMore).levels.at(-1)!,
  );
}
