import { projectScenario, type Scenario } from '@drumline/planning';
import type { CacheProjection } from '@drumline/stock';
import type { IsoDate } from '@drumline/units';

/**
 * The day by which drums landed at a place on a day are burned: what stood there before goes first, so it is the first
 * day by which the draws have taken everything that stood there on the evening of the landing. The last day looked
 * ahead to where they do not.
 */
export const plannedUse = (scenario: Scenario, place: string, landed: IsoDate): IsoDate => {
  const cache = projectionsOf(scenario).find((each) => each.place === place);
  const last = cache?.dates.at(-1);
  if (cache === undefined || last === undefined) return landed;
  const day = Math.max(0, cache.dates.indexOf(landed) + 1);
  let left: number = cache.usable[day] ?? 0;
  for (let later = day + 1; later < cache.usable.length; later += 1) {
    left -= cache.drawn[later] ?? 0;
    if (left <= 0) return cache.dates[later - 1] ?? last;
  }
  return last;
};

/** Asked for every drum of a flight: worked out once for a scenario. */
const projectionsOf = (scenario: Scenario): readonly CacheProjection[] => {
  const known = projections.get(scenario);
  if (known !== undefined) return known;
  const made = projectScenario(scenario, scenario.flights);
  projections.set(scenario, made);
  return made;
};

const projections = new WeakMap<Scenario, readonly CacheProjection[]>();
