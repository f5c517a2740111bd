import type { Route, StorePrices } from '@drumline/routing';
import type { UnpricedStore } from './cache-stores.js';

/** What the prices of shortages are made from; money in cents, amounts in litres. */
export interface PriceBasis {
  readonly days: number;
  /** The most that one more flight, or one flight sent elsewhere, can cost: `dearestChange`. */
  readonly dearestChange: number;
  /** Every shortage is a whole multiple of this: `smallestShortage`. */
  readonly smallestShortage: number;
  /** The most that one flight carries. */
  readonly largestLoad: number;
  /** All that is asked for over the horizon. */
  readonly totalDemand: number;
  /** Worth of a litre missing from the end target. */
  readonly replacementPerLitre: number;
  /** Price of a litre missing from the cushion at the end of a day. */
  readonly cushionPerLitreDay: number;
}

/**
 * Prices by which the aims of a plan dominate each other (conventions, "Order of aims"), in cents per litre and,
 * but for `unmet` and `belowEndTarget`, per day.
 *
 * Let g be the smallest shortage, F the dearest change, L the largest load, T the days.
 *
 * - Minimum over money. With m = floor(F / g) + 1 the smallest shortage costs g m > F: a flight that spares
 *   any litre-day below the minimum pays for itself, whatever else it costs.
 * - Critical over minimum. With c = (floor(T L / g) + 1) m, the smallest shortage below critical costs
 *   g c > T L m: more than one flight can spare elsewhere, with every litre below a minimum on every day.
 * - Unmet over both. With u = (T + 1)(m + c), a litre refused to a draw costs more than it can save by staying
 *   in the cache to the end, below minimum and critical all the way: no plan rations.
 *
 * Where so great a c would cost the cents of the sum (all demand unmet above 2^50), c is as great as precision allows,
 * and never less than (T + 1) m: one litre-day below critical over the same litre below a minimum on every day.
 */
export function storePrices(basis: PriceBasis): StorePrices {
  const { days, dearestChange, smallestShortage, largestLoad } = basis;
  const belowMinimum = Math.floor(dearestChange / smallestShortage) + 1;
  const wanted = Math.floor((days * largestLoad) / smallestShortage) + 1;
  const precise = Math.floor(mostCents / (Math.max(1, basis.totalDemand) * (days + 1) * belowMinimum)) - 1;
  const belowCritical = Math.max(days + 1, Math.min(wanted, precise)) * belowMinimum;
  return {
    unmet: (days + 1) * (belowMinimum + belowCritical),
    belowMinimum,
    belowCritical,
    belowCushion: basis.cushionPerLitreDay,
    belowEndTarget: basis.replacementPerLitre,
  };
}

/** Sums up to here are exact to an eighth of a cent. */
const mostCents = 2 ** 50;

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

/** The most litres aboard any route. */
export function largestLoad(routes: readonly Route[], packSize: number): number {
  return routes
    .flatMap(({ conditions }) => conditions.flatMap(({ legPacks }) => legPacks))
    .reduce((most, packs) => Math.max(most, packs * packSize), 0);
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
