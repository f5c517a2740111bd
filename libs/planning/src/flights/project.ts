import { type CacheProjection, projectCaches, type StockOutlook } from '@drumline/stock';
import { litres } from '@drumline/units';
import { stockOutlook } from '../problem/stock-outlook.js';
import type { Scenario, StandingFlight } from '../scenario.js';

/** Levels of every cache in litres with the drums of these flights landed; without flights: with no deliveries. */
export function projectScenario(
  scenario: Scenario,
  flights: readonly Pick<StandingFlight, 'date' | 'stops'>[],
): readonly CacheProjection[] {
  return projectCaches(withLandings(scenario, stockOutlook(scenario), flights));
}

/** An outlook with the drums of these flights landed, all filled fresh. */
export function withLandings(
  scenario: Scenario,
  outlook: StockOutlook,
  flights: readonly Pick<StandingFlight, 'date' | 'stops'>[],
): StockOutlook {
  const { fillLitres } = scenario.policy.drum;
  const landings = flights.flatMap(({ date, stops }) =>
    stops
      .filter(({ drums }) => drums > 0)
      .map(({ place, drums }) => ({ date, place, litres: litres(drums * fillLitres), retestDue: null })),
  );
  return { ...outlook, landings };
}

/** The outlook of some caches and of all that slings tie to them, which is all that a landing there can change. */
export function outlookAround(outlook: StockOutlook, places: readonly string[]): StockOutlook {
  const around = new Set(places);
  for (let size = 0; size !== around.size; ) {
    size = around.size;
    for (const { from, to } of outlook.slings)
      if (around.has(from) || around.has(to)) around.add(from).add(to);
  }
  const here = <T extends { readonly place: string }>(items: readonly T[]): readonly T[] =>
    items.filter(({ place }) => around.has(place));
  const { picture } = outlook;
  return {
    ...outlook,
    picture: { ...picture, drums: here(picture.drums), counts: here(picture.counts) },
    caches: here(outlook.caches),
    draws: here(outlook.draws),
    landings: here(outlook.landings),
    slings: outlook.slings.filter(({ from }) => around.has(from)),
  };
}
