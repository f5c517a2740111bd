import { type Days, type Litres, litres } from '@drumline/units';
import type { DailyUse } from './daily-use.js';
import { normalQuantile } from './normal.js';

/** Days from asking for fuel to its landing at the cache: mean and standard deviation. */
export interface LeadTime {
  readonly mean: Days;
  readonly deviation: Days;
}

/** A minimum to suggest beside the operator's own figure, in its three parts. */
export interface SuggestedMinimum {
  readonly minimum: Litres;
  /** Mean use while the next fuel is on its way. */
  readonly leadTimeUse: Litres;
  /** For a lead time longer, or use greater, than the mean. */
  readonly safetyStock: Litres;
  readonly reserve: Litres;
}

/**
 * Suggested minimum of a cache: use over the lead time, safety stock for the service level (the chance that the stock
 * above the reserve outlasts the lead time), and the medevac reserve beneath.
 * Throws a RangeError for a service level that is not between 0 and 1.
 */
export const suggestedMinimum = (
  use: DailyUse,
  leadTime: LeadTime,
  reserve: Litres,
  serviceLevel: number,
): SuggestedMinimum => {
  const leadTimeUse = litres(use.mean * leadTime.mean);
  const safetyStock = litres(normalQuantile(serviceLevel) * deviationOverLeadTime(use, leadTime));
  return { minimum: litres(leadTimeUse + safetyStock + reserve), leadTimeUse, safetyStock, reserve };
};

/**
 * Standard deviation of the use over a lead time, in litres: sqrt(L sd_d^2 + d^2 sd_L^2), for days of use independent of
 * each other and of the lead time (common textbook formula). Weather comes in streaks, so it is too low for strips
 * where flights are lost to weather for days on end: the simulated fortnights show that.
 */
export const deviationOverLeadTime = (use: DailyUse, leadTime: LeadTime): Litres =>
  litres(Math.sqrt(leadTime.mean * use.deviation ** 2 + use.mean ** 2 * leadTime.deviation ** 2));
