import type { Route, StorePrices } from '@drumline/routing';
import type { UnpricedStore } from './cache-stores.js';

/** What the prices of shortages are made from; money in cents, amounts in litres. */
export interface PriceBasis {
  readonly days: number;
  /** The most that one more flight, or one flight sent elsewhere, can cost: `dearestChange`. */
  readonly dearestChange: number;
  /** Every shortage is a whole multiple of this: `smallestShortage`. */
  readonly smallestShortage: number;
  /** Worth of a litre missing from the end target. */
  readonly replacementPerLitre: number;
  /** Price of a litre missing from the cushion at the end of a day. */
  readonly cushionPerLitreDay: number;
}

/**
 * Prices by which the aims of a plan dominate each other (conventions, "Order of aims"), in cents per litre and,
 * but for `unmet` and `belowEndTarget`, per day.
 *
 * Let g be the smallest shortage, F the dearest change, T the days.
 *
 * - Minimum over money. With m = floor(F / g) + 1 the smallest shortage costs g m > F: a flight that spares
 *   any litre-day below the minimum pays for itself, whatever else it costs.
 * - Critical over minimum. With c = (T + 1) m, one litre-day below critical costs more than the same litre below
 *   the minimum on each of the T days: landing a litre where it lifts a cache to critical for one day is
 *   worth more than landing it anywhere else for the sake of a minimum.
 * - Unmet over both. With u = (T + 1)(m + c), a litre refused to a draw costs more than it can save by staying
 *   in the cache to the end, below minimum and critical all the way: no plan rations.
 *
 * The size stays within double precision. In a fortnight c = 15 m and u = 240 m; at 1,000,000 cents for the dearest
 * change and shortages of one litre, 10 million litres unmet are 2.4e15 cents, still counted to the cent (2^53 = 9e15).
 */
export function storePrices(basis: PriceBasis): StorePrices {
  const { days, dearestChange, smallestShortage } = basis;
  const belowMinimum = Math.floor(dearestChange / smallestShortage) + 1;
  const belowCritical = (days + 1) * belowMinimum;
  return {
    unmet: (days + 1) * (belowMinimum + belowCritical),
    belowMinimum,
    belowCritical,
    belowCushion: basis.cushionPerLitreDay,
    belowEndTarget: basis.replacementPerLitre,
  };
}

/** The greatest common divisor of every figure that moves or tests a level, at least 1; litres. */
export function smallestShortage(stores: readonly UnpricedStore[], packSize: number): number {
  const figures = stores.flatMap((store) => [
    store.opening,
    store.floor,
    store.minimum,
    store.critical,
    ...store.arrivals,
    ...store.losses,
    ...store.demand,
  ]);
  return figures.every(Number.isInteger) ? figures.reduce(divisor, packSize) : 1;
}

function divisor(a: number, b: number): number {
  return b === 0 ? Math.abs(a) : divisor(b, a % b);
}

/** The dearest full flight of the pool with the dearest litres, and the price of changing a standing flight; cents. */
export function dearestChange(
  routes: readonly Route[],
  packSize: number,
  perLitre: number,
  changePrice: number,
): number {
  const flights = routes.flatMap((route) =>
    route.conditions.map(({ cost, legPacks }) => cost + Math.max(0, ...legPacks) * packSize * perLitre),
  );
  return flights.reduce((dearest, cost) => Math.max(dearest, cost), 0) + changePrice;
}
