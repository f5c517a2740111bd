import type { UnpricedStore } from './cache-stores.js';

/**
 * Worth of a litre more in a thin cache at the end of a day, in cents: about a thousandth of what a litre costs. It
 * decides between plans of the same money, so that the same drums come earlier and where a lost flight would hurt; on
 * the Hollowtarn territory it is 0.1 % of the money. Half days and weather come after: `steadyPlan`.
 */
export const cushionPerLitreDay = 0.2;

/** The level up to which more is less fragile: the minimum and the largest draw of a day on top. */
export function cushionOf(store: UnpricedStore): number {
  const leaving = store.demand.map((amount, day) => amount + store.losses[day]!);
  return store.minimum + Math.max(0, ...leaving);
}
