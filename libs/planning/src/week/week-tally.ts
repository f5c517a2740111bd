import type { CacheProjection } from '@drumline/stock';
import { type IsoDate, minutesOfDay } from '@drumline/units';
import type { BaseUse } from '../flight-plan.js';
import { baseUse } from '../flights/base-use.js';
import { sketchFlight } from '../flights/flight-sketch.js';
import { isFlown } from '../flights/flight-state.js';
import { projectScenario } from '../flights/project.js';
import { flightLoads } from '../problem/flight-loads.js';
import { drumsOf, isWithin } from '../problem/standing-flights.js';
import { territoryOf } from '../problem/territory.js';
import { expectedDrums } from '../risk/simulate.js';
import type { Scenario, StandingFlight } from '../scenario.js';

/** Litres missing, a day each: 25 L short for two days are 50 litre-days. */
export interface ShortBy {
  readonly litreDays: number;
  /** The first day and the cache that is shortest then; null: nothing is short. */
  readonly first: { readonly place: string; readonly date: IsoDate } | null;
}

/** What lies ahead with every flight that stands flown. */
export interface WeekTally {
  readonly belowCritical: ShortBy;
  readonly belowMinimum: ShortBy;
  readonly drums: number;
  /** Drums that land on average, by the weather odds of each flight's half day. */
  readonly expectedDrums: number;
  readonly bases: readonly BaseUse[];
}

/**
 * The tally of a scenario's own flights. Shortage is that of the days for which flights are offered: beyond them the plan
 * has only ideas. Litres below critical count below minimum as well.
 */
export function weekTally(scenario: Scenario): WeekTally {
  const flights = scenario.flights.filter(({ date }) => isWithin(scenario, date));
  const loads = flightLoads(scenario, territoryOf(scenario));
  const caches = projectScenario(scenario, flights);
  const { landed, toLand } = landings(scenario, flights);
  return {
    belowCritical: shortBy(scenario, caches, ({ criticalLitres }) => criticalLitres),
    belowMinimum: shortBy(scenario, caches, ({ minimumLitres }) => minimumLitres),
    drums: flights.reduce((sum, flight) => sum + drumsOf(flight), 0),
    expectedDrums: landed + expectedDrums(toLand, scenario.weather),
    bases: baseUse(
      scenario,
      loads,
      flights.map((flight) => sketchFlight(scenario, loads, flight)),
    ),
  };
}

function shortBy(
  { offeredDays }: Scenario,
  caches: readonly CacheProjection[],
  limitOf: (cache: CacheProjection) => number,
): ShortBy {
  const short = caches.flatMap((cache) =>
    cache.dates.slice(0, offeredDays).map((date, day) => ({
      place: cache.place,
      date,
      litres: Math.max(0, limitOf(cache) - cache.usable[day + 1]!),
    })),
  );
  const first = short
    .filter(({ litres }) => litres > 0)
    .sort((one, other) =>
      one.date < other.date ? -1 : one.date > other.date ? 1 : other.litres - one.litres,
    )[0];
  return {
    litreDays: short.reduce((sum, { litres }) => sum + litres, 0),
    first: first === undefined ? null : { place: first.place, date: first.date },
  };
}

const noon = minutesOfDay('12:00');

function landings({ policy }: Scenario, flights: readonly StandingFlight[]) {
  const landed = flights
    .filter(({ state }) => isFlown(state))
    .reduce((sum, flight) => sum + drumsOf(flight), 0);
  const toLand = flights
    .filter(({ state }) => !isFlown(state))
    .flatMap(({ departs, stops }) =>
      stops.map(({ place, drums }) => ({
        place,
        day: 1, // no odds depend on it
        half:
          departs !== undefined && minutesOfDay(departs) >= noon
            ? ('afternoon' as const)
            : ('morning' as const),
        drums,
        litres: drums * policy.drum.fillLitres,
      })),
    );
  return { landed, toLand };
}
