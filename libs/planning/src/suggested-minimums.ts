import { dailyUse, type LeadTime, type SuggestedMinimum, suggestedMinimum } from '@drumline/forecast';
import { days, daysFrom, type Litres } from '@drumline/units';
import { plannedDraws } from './problem/stock-outlook.js';
import type { Scenario } from './scenario.js';

/** A minimum to suggest for a cache, beside the operator's own. */
export interface CacheSuggestion extends SuggestedMinimum {
  readonly place: string;
  readonly operatorsLitres: Litres;
}

/**
 * Suggested minimum of every cache, in litres, from the programme's use over the days of the plan, the reserve, and the time until a
 * flight gets through. That time: a flight asked for today may fly tomorrow, and each morning it is called off with the strip's
 * odds, so the wait is geometric (common practice, no source). Slung drums wait for the strip's weather too, but a pad has no odds
 * of its own: it waits one day.
 */
export function suggestedMinimums(scenario: Scenario, serviceLevel: number): CacheSuggestion[] {
  const dates = daysFrom(scenario.firstDay, scenario.days);
  const draws = plannedDraws(scenario);
  return scenario.caches.map((cache) => {
    const use = dailyUse(
      draws.filter(({ place }) => place === cache.place),
      dates,
    );
    const odds = scenario.weather.find(({ place }) => place === cache.place);
    const suggestion = suggestedMinimum(
      use,
      waitForAFlight(odds?.morningCancel ?? 0),
      cache.medevacReserveLitres,
      serviceLevel,
    );
    return { place: cache.place, operatorsLitres: cache.minimumLitres, ...suggestion };
  });
}

/** Mean and deviation of a geometric wait, in days: 1 / (1 - q) and sqrt(q) / (1 - q). A strip always shut is taken as shut 99 mornings of 100. */
function waitForAFlight(cancel: number): LeadTime {
  const q = Math.min(cancel, 0.99);
  return { mean: days(1 / (1 - q)), deviation: days(Math.sqrt(q) / (1 - q)) };
}
