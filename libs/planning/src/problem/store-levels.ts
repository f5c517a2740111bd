import type { UnpricedStore } from './cache-stores.js';

/** Closing level of each day, and what could not be drawn. */
export interface StoreLevels {
  readonly levels: readonly number[];
  readonly unmet: readonly number[];
}

/** Levels of a store with these litres landed by day (conventions, "Order of a day"). */
export function storeLevels(store: UnpricedStore, landed: readonly number[]): StoreLevels {
  const levels: number[] = [];
  const unmet: number[] = [];
  let level = store.opening;
  store.demand.forEach((asked, day) => {
    const standing = level + store.arrivals[day]! + landed[day]! - store.losses[day]!;
    const drawn = Math.min(asked, Math.max(0, standing - store.floor));
    level = Math.max(0, standing) - drawn;
    levels.push(level);
    unmet.push(asked - drawn + Math.max(0, -standing));
  });
  return { levels, unmet };
}
