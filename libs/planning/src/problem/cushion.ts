import type { UnpricedStore } from './cache-stores.js';

/**
 * Worth of a litre more in a thin cache at the end of a day, in cents: a hundredth of what a litre costs. It decides
 * between plans of nearly the same money, so that the same drums come earlier and where a cancelled flight would hurt.
 */
export const cushionPerLitreDay = 0.2;

/** The level up to which more is less fragile: the minimum and the largest draw of a day on top. */
export function cushionOf(store: UnpricedStore): number {
  const leaving = store.demand.map((amount, day) => amount + store.losses[day]!);
  return store.minimum + Math.max(0, ...leaving);
}
