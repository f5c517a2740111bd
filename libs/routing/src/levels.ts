import type { Store } from './problem.js';

/** A store's days under given deliveries: closing level and unmet stock units of each. */
export interface StoreCourse {
  readonly levels: readonly number[];
  readonly unmet: readonly number[];
}

/** What moves the level of a store, deliveries apart. */
export type StoreFlows = Pick<Store, 'opening' | 'arrivals' | 'losses' | 'demand' | 'floor'>;

/**
 * Levels of a store at the end of each day, in stock units, with these deliveries (stock units by day), in the
 * order of a day written at `Store`. That deliveries fit the capacity is for the checker to say.
 */
export function storeCourse(store: StoreFlows, deliveries: readonly number[]): StoreCourse {
  const levels: number[] = [];
  const unmet: number[] = [];
  let level = store.opening;
  for (let day = 0; day < store.demand.length; day++) {
    const afterLosses = level + store.arrivals[day] + deliveries[day] - store.losses[day];
    level = Math.max(0, afterLosses);
    const drawn = Math.min(store.demand[day], Math.max(0, level - store.floor));
    unmet.push(level - afterLosses + store.demand[day] - drawn);
    level -= drawn;
    levels.push(level);
  }
  return { levels, unmet };
}
