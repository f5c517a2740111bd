import { type CacheProjection, type Landing, projectCaches, type StockOutlook } from '@drumline/stock';
import { type IsoDate, litres } from '@drumline/units';
import { usableDrums } from '../problem/standing-flights.js';
import { stockOutlook } from '../problem/stock-outlook.js';
import type { Scenario, StandingFlight, StandingStop } from '../scenario.js';

/** Levels of every cache in litres with the drums of these flights landed; without flights: with no deliveries. */
export function projectScenario(
  scenario: Scenario,
  flights: readonly Pick<StandingFlight, 'date' | 'stops'>[],
): readonly CacheProjection[] {
  return projectCaches(withLandings(scenario, stockOutlook(scenario), flights));
}

/** An outlook with the drums of these flights landed, all filled fresh; those on hold stand there and may not be used. */
export function withLandings(
  scenario: Scenario,
  outlook: StockOutlook,
  flights: readonly Pick<StandingFlight, 'date' | 'stops'>[],
): StockOutlook {
  const { fillLitres } = scenario.policy.drum;
  const landing = (date: IsoDate, place: string, drums: number): Landing => ({
    date,
    place,
    litres: litres(drums * fillLitres),
    retestDue: null,
  });
  const landed = (date: IsoDate, { place, ...stop }: StandingStop): readonly Landing[] => [
    landing(date, place, usableDrums(stop)),
    { ...landing(date, place, stop.heldDrums ?? 0), held: true },
  ];
  const landings = flights.flatMap(({ date, stops }) => stops.flatMap((stop) => landed(date, stop)));
  return { ...outlook, landings: landings.filter((each) => each.litres > 0) };
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
