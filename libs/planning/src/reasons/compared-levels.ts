import { type CacheProjection, projectCaches, type StockOutlook } from '@drumline/stock';
import { outlookAround, withLandings } from '../flights/project.js';
import type { Scenario, StandingFlight } from '../scenario.js';

/** What the reasons of a plan's flights are found from. */
export interface ReasonPicture {
  readonly scenario: Scenario;
  /** Every draw and sling, no landing. */
  readonly outlook: StockOutlook;
  readonly flights: readonly StandingFlight[];
  /** Levels with every flight flown. */
  readonly caches: readonly CacheProjection[];
  /** What each cache is to hold at the end, by place. */
  readonly endTargets: ReadonlyMap<string, number>;
}

/** One cache with the flight as planned and without it. */
export interface Compared {
  readonly withIt: CacheProjection;
  readonly without: CacheProjection;
}

/** The caches that a flight can change, as planned and with what is flown instead; null: nothing is. */
export function comparedLevels(
  { scenario, outlook, flights, caches }: ReasonPicture,
  flight: StandingFlight,
  instead: StandingFlight | null,
): readonly Compared[] {
  const others = flights.filter((other) => other.id !== flight.id);
  const flown = withLandings(scenario, outlook, instead ? [...others, instead] : others);
  const around = outlookAround(
    flown,
    flight.stops.map(({ place }) => place),
  );
  const byPlace = new Map(caches.map((cache) => [cache.place, cache]));
  return projectCaches(around).map((without) => ({ withIt: byPlace.get(without.place)!, without }));
}
