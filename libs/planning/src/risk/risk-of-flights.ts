import { randomFrom } from '@drumline/routing';
import type { CacheProjection } from '@drumline/stock';
import type { PlannedFlight, Risk } from '../flight-plan.js';
import { isFlown } from '../flights/flight-state.js';
import { usableDrums } from '../problem/standing-flights.js';
import type { Scenario } from '../scenario.js';
import { simulate, type WeatherLanding } from './simulate.js';

/**
 * Chance of falling below critical with these flights, over so many fortnights of one seed. Flights home again have
 * landed their drums; all others stand the weather of their half day.
 */
export function riskOfFlights(
  scenario: Pick<Scenario, 'weather' | 'days' | 'policy'>,
  flights: readonly PlannedFlight[],
  caches: readonly CacheProjection[],
  settings: { readonly fortnights: number; readonly seed: number },
): Risk {
  const { fillLitres } = scenario.policy.drum;
  const landings = (of: readonly PlannedFlight[]): readonly WeatherLanding[] =>
    of.flatMap(({ day, half, stops }) =>
      stops
        .filter(({ drums }) => drums > 0)
        .map(({ place, ...stop }) => ({
          place,
          day,
          half,
          drums: stop.drums,
          litres: usableDrums(stop) * fillLitres,
        })),
    );
  const flown = landings(flights.filter(({ state }) => isFlown(state)));
  const flownDrums = flown.reduce((sum, { drums }) => sum + drums, 0);
  const open = landings(flights.filter(({ state }) => !isFlown(state)));
  const { weather, days } = scenario;
  const judge = (made: readonly WeatherLanding[]) =>
    simulate({ caches, landings: made, flownDrums, weather, days }, randomFrom(settings.seed), settings);
  const { belowCritical, expectedDrums } = judge(open.map((landing) => ({ ...landing, half: 'morning' })));
  return { ...judge(open), allMorning: { belowCritical, expectedDrums } };
}
