import type { Draw, StockOutlook } from '@drumline/stock';
import { daysFrom } from '@drumline/units';
import type { Scenario } from '../scenario.js';

/** Stock as known, with every draw and sling of the scenario and no landing yet. */
export function stockOutlook(scenario: Scenario): StockOutlook {
  const { drums, batches, counts, asOf, policy } = scenario;
  return {
    picture: { drums, batches, counts, asOf, countTolerance: policy.countTolerance },
    caches: scenario.caches,
    dates: daysFrom(scenario.firstDay, scenario.days),
    fillLitres: policy.drum.fillLitres,
    draws: plannedDraws(scenario),
    landings: [],
    slings: scenario.slings,
  };
}

/** Helicopter tasks and planned uplifts as draws on their places. */
export function plannedDraws(scenario: Scenario): readonly Draw[] {
  const tasks = scenario.helicopterTasks.map(({ date, place, litres, programme }) => ({
    date,
    place,
    litres,
    for: programme,
  }));
  return [...tasks, ...scenario.plannedUplifts];
}
