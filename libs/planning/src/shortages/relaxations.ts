import { buildProblem } from '../problem/build-problem.js';
import type { BlockingLimit, BuiltProblem } from '../problem/problem-map.js';
import type { Scenario, StandingFlight } from '../scenario.js';

/** The same problem without one of its limits; the routes of the flights are among its routes. */
export type Relaxation = (built: BuiltProblem, flights: readonly StandingFlight[]) => BuiltProblem;

const rebuilt =
  (change: (scenario: Scenario) => Partial<Scenario>): Relaxation =>
  ({ scenario, endTarget }, flights) =>
    buildProblem({ ...scenario, ...change(scenario) }, endTarget, flights);

/** Each limit that can stand in the way of a drum, and the problem without it. */
export const relaxations: Readonly<Record<BlockingLimit, Relaxation>> = {
  'base stock': (built) => ({ ...built, problem: withoutSupply(built) }),
  closed: rebuilt(({ places }) => ({
    notices: [],
    noFlyingDays: [],
    surfaceReports: [],
    places: places.map((place) => ({ ...place, surface: { ...place.surface, expected: 'dry' } })),
  })),
  crew: rebuilt(() => ({ pilots: [] })),
  'aircraft hours': rebuilt(({ aircraft }) => {
    const present = aircraft.map((each) => ({ ...each, absences: [] }));
    return { aircraft: [...present, ...present.map((each) => ({ ...each, tail: `${each.tail} again` }))] };
  }),
  'landing capacity': rebuilt(({ places }) => ({
    places: places.map((place) => ({ ...place, landingCapacityDrumsPerDay: null })),
  })),
  capacity: rebuilt(({ caches }) => ({
    caches: caches.map(({ permitUntil: _, ...cache }) => ({ ...cache, capacityDrums: 1_000_000 })),
  })),
};

/** Filled drums, empties, the rate of filling and bulk are all as many as anybody could take. */
function withoutSupply({ problem }: BuiltProblem): BuiltProblem['problem'] {
  return {
    ...problem,
    stores: problem.stores.map((store) => ({
      ...store,
      supply: store.supply && {
        ...store.supply,
        packsByDay: store.supply.packsByDay.map(() => 1_000_000),
        unitsByDay: null,
      },
    })),
  };
}
