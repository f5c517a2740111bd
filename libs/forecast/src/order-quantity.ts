import { normalDensity, normalQuantile } from './normal.js';

/** A single build-up before the window shuts: how much to hold against an uncertain season's use. */
export interface BuildUp {
  /** Price of a unit too many and of a unit short, in any one money unit. */
  readonly costOver: number;
  readonly costShort: number;
  /** Use of the season, normally distributed. */
  readonly mean: number;
  readonly deviation: number;
}

/**
 * The newsvendor quantity: where the chance of being short costs as much as the chance of having too much; with its
 * expected cost. Quantity in the units of `mean`, cost in those of the prices.
 * Source: L. V. Snyder and Z.-J. M. Shen, Fundamentals of Supply Chain Theory, chapter 4.
 * Throws a RangeError where a price is not above 0.
 */
export const buildUpQuantity = (
  build: BuildUp,
): { readonly quantity: number; readonly expectedCost: number } => {
  const { costOver, costShort, mean, deviation } = build;
  const z = normalQuantile(costShort / (costShort + costOver));
  return {
    quantity: mean + z * deviation,
    expectedCost: (costOver + costShort) * deviation * normalDensity(z),
  };
};

/**
 * Economic order quantity for steady use, and its cost per unit of time: an order costs `orderCost` whatever its size,
 * keeping one unit for one unit of time costs `holdingCost`.
 * Source: L. V. Snyder and Z.-J. M. Shen, Fundamentals of Supply Chain Theory, chapter 3.
 */
export const economicOrderQuantity = (
  orderCost: number,
  holdingCost: number,
  use: number,
): { readonly quantity: number; readonly cost: number } => ({
  quantity: Math.sqrt((2 * orderCost * use) / holdingCost),
  cost: Math.sqrt(2 * orderCost * use * holdingCost),
});
