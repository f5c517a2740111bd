import type { Scenario } from '../scenario.js';
import { baseStores } from './base-stores.js';
import { cacheStores, type UnpricedStore } from './cache-stores.js';
import { bookedPlaces, type FixedFlights } from './fixed-flights.js';
import type { StoreEntry } from './problem-map.js';
import { placesOf } from './standing-flights.js';

/** Bases, caches, and the other places that booked, standing or hand-made flights touch. */
export function storeEntries(scenario: Scenario): readonly StoreEntry[] {
  const bases = scenario.bases.map(({ place }) => place);
  const caches = scenario.caches.map(({ place }) => place);
  const touched = [
    ...scenario.bookedFlights.flatMap(bookedPlaces),
    ...[...scenario.flights, ...scenario.handPlan].flatMap(placesOf),
    ...scenario.aircraft.map(({ home }) => home),
  ];
  const others = new Set(touched.filter((place) => !bases.includes(place) && !caches.includes(place)));
  return [
    ...bases.map((place) => ({ place, kind: 'base' }) as const),
    ...caches.map((place) => ({ place, kind: 'cache' }) as const),
    ...[...others].map((place) => ({ place, kind: 'no cache' }) as const),
  ];
}

/** The stores in the order of their entries. */
export function unpricedStores(
  scenario: Scenario,
  entries: readonly StoreEntry[],
  fixed: FixedFlights,
): readonly UnpricedStore[] {
  const others = entries.filter(({ kind }) => kind === 'no cache');
  return [
    ...baseStores(scenario, fixed),
    ...cacheStores(
      scenario,
      fixed.frozen.map(({ flight }) => flight),
    ),
    ...others.map(({ place }) => emptyStore(place, scenario.days)),
  ];
}

/** A place where no drum may be set down. */
function emptyStore(place: string, days: number): UnpricedStore {
  const nothing = new Array<number>(days).fill(0);
  return {
    id: place,
    opening: 0,
    capacity: nothing,
    arrivals: nothing,
    losses: nothing,
    demand: nothing,
    floor: 0,
    minimum: 0,
    critical: 0,
    packsPerDay: nothing,
    supply: null,
  };
}
