import type { PlanCost, Proof } from '@drumline/routing';
import { cents } from '@drumline/units';
import type { MoneyGap } from '../flight-plan.js';

/**
 * How far the plan's money can be from the cheapest, of all plans with no more shortage. The bound holds for shortage and
 * money together; with the plan's own shortage taken off both, what is left bounds the money. Null without a bound.
 */
export function moneyGap(tiers: PlanCost, { bound, objective }: Proof): MoneyGap | null {
  if (bound === null) return null;
  const money = tiers.total - tiers.unmet - tiers.belowCritical - tiers.belowMinimum;
  const above = Math.max(0, objective - bound);
  return {
    noLessThan: cents(Math.max(0, Math.floor(money - above))),
    atMostShare: money > 0 ? above / money : 0,
  };
}
