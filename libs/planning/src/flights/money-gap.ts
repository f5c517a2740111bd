import type { PlanCost, Proof } from '@drumline/routing';
import { type Cents, cents } from '@drumline/units';
import type { MoneyGap } from '../flight-plan.js';

/**
 * What could be saved at most, among plans with no more shortage, all told: flights, fuel, handling, changes to the standing
 * plan, litres short of the end target. The bound holds for shortage and money together; with the plan's own shortage taken off
 * both, what is left bounds the money. Null without a bound, or with one that says nothing about the money. The share is of
 * `cost`, the flight, fuel and handling that are printed beside it: whoever divides the two printed figures gets it.
 */
export function moneyGap(tiers: PlanCost, { bound, objective }: Proof, cost: Cents): MoneyGap | null {
  if (bound === null) return null;
  const money = tiers.total - tiers.unmet - tiers.belowCritical - tiers.belowMinimum;
  const above = Math.max(0, objective - bound);
  if (above > money || (above > 0 && cost <= 0)) return null;
  return { savedAtMost: cents(Math.ceil(above)), share: above > 0 ? above / cost : 0 };
}
