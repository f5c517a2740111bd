import { isDeepStrictEqual } from 'node:util';
import type { CacheCourse, ForeseenForProgramme, ProjectionChangeAnswer } from '@drumline/contract';
import {
  type CacheOutlook,
  type CostedFlight,
  deliveredCosts,
  foreseenRecharge,
  plannedByProgramme,
  type Scenario,
} from '@drumline/planning';
import type { Cache } from '@drumline/stock';
import { levels } from './cache-page.js';

interface Looked {
  readonly scenario: Scenario;
  readonly outlooks: readonly CacheOutlook[];
}

/** The caches whose course or levels differ between two looks ahead. */
export const changedCaches = (before: Looked, after: Looked): ProjectionChangeAnswer['items'] => {
  const later = new Map(coursesOf(after));
  return coursesOf(before).flatMap(([place, course]) => {
    const changed = later.get(place);
    if (changed === undefined || isDeepStrictEqual(changed, course)) return [];
    return [{ place, before: course, after: changed }];
  });
};

const coursesOf = ({ scenario, outlooks }: Looked): readonly (readonly [string, CacheCourse])[] =>
  scenario.caches.map((cache, index) => [cache.place, courseOf(cache, outlooks[index]!)]);

const courseOf = (cache: Cache, { offered }: CacheOutlook): CacheCourse => {
  const { minimumLitres, criticalLitres, medevacReserveLitres, capacityDrums } = cache;
  return { minimumLitres, criticalLitres, medevacReserveLitres, capacityDrums, levels: levels(offered) };
};

/** The programmes whose helicopter hours, litres or recharge are other than before, at what these flights deliver for. */
export const changedProgrammes = (
  before: Scenario,
  after: Scenario,
  flights: readonly CostedFlight[],
): ProjectionChangeAnswer['programmes'] => {
  const later = foreseen(after, flights);
  return foreseen(before, flights).flatMap((planned, index) =>
    isDeepStrictEqual(planned, later[index]) ? [] : [{ before: planned, after: later[index]! }],
  );
};

const foreseen = (scenario: Scenario, flights: readonly CostedFlight[]): readonly ForeseenForProgramme[] => {
  const costs = deliveredCosts(flights, scenario.slings);
  return plannedByProgramme(scenario).map((planned, index) => ({
    ...planned,
    recharge: foreseenRecharge(scenario.programmes[index]!, scenario, costs),
  }));
};
