import type { Store } from '../problem.js';
import type { Draft } from './draft.js';
import type { RoundingCut, Units } from './store-rows.js';

const DIVISORS = [1, 2, 3, 4, 5, 6];

/**
 * What a store needs over the whole horizon, rounded: packs set down + unmet + end shortage >= need, divided by k and
 * strengthened by mixed-integer rounding (Nemhauser and Wolsey 1990), for k = 1 to 6. `slack` are the columns of
 * unmet demand and of the end shortage. Valid because drops are whole packs and a route is travelled a whole
 * number of times.
 */
export function roundingCuts(
  draft: Draft,
  store: Store,
  units: Units,
  slack: readonly number[],
  largestDrop: number,
): RoundingCut[] {
  const total = (amounts: readonly number[]) => amounts.reduce((sum, amount) => sum + amount, 0);
  const outflow = total(store.demand) + total(store.losses) - total(store.arrivals);
  const need = (store.endTarget - store.opening + outflow) / units.packSize;
  if (need <= 0) return [];
  return DIVISORS.flatMap((divisor) => {
    const fraction = need / divisor - Math.floor(need / divisor);
    // Nothing to round up, or a coefficient too steep for the solver's tolerances.
    if (fraction < 0.01 || fraction > 1 - 1e-6) return [];
    const row = draft.row(Math.ceil(need / divisor), Number.POSITIVE_INFINITY);
    for (const column of slack) draft.enter(column, row, 1 / (divisor * fraction));
    const weights = Array.from({ length: largestDrop + 1 }, (_, packs) => {
      const whole = Math.floor(packs / divisor);
      return whole + Math.min(1, (packs / divisor - whole) / fraction);
    });
    return [{ row, weights }];
  });
}
