import type { Problem } from '@drumline/routing';
import { buildProblem } from '../problem/build-problem.js';
import type { BlockingLimit, BuiltProblem } from '../problem/problem-map.js';
import type { Scenario } from '../scenario.js';

/** The same problem without one of its limits. */
export type Relaxation = (built: BuiltProblem) => Problem;

const rebuilt =
  (change: (scenario: Scenario) => Partial<Scenario>): Relaxation =>
  ({ scenario, endTarget }) =>
    buildProblem({ ...scenario, ...change(scenario) }, endTarget).problem;

/** Each limit that can stand in the way of a drum, and the problem without it. */
export const relaxations: Readonly<Record<BlockingLimit, Relaxation>> = {
  closed: rebuilt(({ places }) => ({
    notices: [],
    noFlyingDays: [],
    surfaceReports: [],
    places: places.map((place) => ({ ...place, surface: { ...place.surface, expected: 'dry' } })),
  })),
  'landing capacity': rebuilt(({ places }) => ({
    places: places.map((place) => ({ ...place, landingCapacityDrumsPerDay: null })),
  })),
  capacity: rebuilt(({ caches }) => ({
    caches: caches.map(({ permitUntil: _, ...cache }) => ({ ...cache, capacityDrums: 1_000_000 })),
  })),
  'aircraft hours': rebuilt(({ aircraft }) => {
    const present = aircraft.map((each) => ({ ...each, absences: [] }));
    return { aircraft: [...present, ...present.map((each) => ({ ...each, tail: `${each.tail} again` }))] };
  }),
  crew: rebuilt(() => ({ pilots: [] })),
  'base stock': ({ problem }) => ({
    ...problem,
    stores: problem.stores.map((store) => ({
      ...store,
      supply: store.supply && {
        ...store.supply,
        packsByDay: store.supply.packsByDay.map(() => 1_000_000),
        unitsByDay: null,
      },
    })),
  }),
};
