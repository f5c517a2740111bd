import { checkPlan, costOf, type Plan, type PlanCost, type Problem } from '@drumline/routing';
import type { BuiltProblem } from '../problem/problem-map.js';
import { changesOf } from './changes.js';
import { fragilityOf } from './fragility.js';

/**
 * Of plans with the same flights for the same money, one that is less fragile: flights move to other days, aircraft
 * and pilots while that lowers the chance of any cache falling below critical, costs nothing, and lets no cache fall
 * shorter. The routing problem does not know half days, nor that the weather of one hits every flight to a strip.
 * Ends when no move helps, or `isOver`.
 */
export function steadyPlan(built: BuiltProblem, plan: Plan, isOver: () => boolean): Plan {
  const fragility = fragilityOf(built);
  const limit = costOf(built.problem, plan);
  let best: Steadied = { plan, fragility: fragility(plan) };
  for (;;) {
    const before = best;
    for (let trip = 0; trip < plan.trips.length && best.fragility > 0; trip++) {
      for (const change of changesOf(built.problem, best.plan.trips, trip)) {
        if (isOver()) return best.plan;
        const trips = best.plan.trips.map((each, t) => change.get(t) ?? each);
        const candidate = { ...best.plan, trips };
        if (isAsGood(costOf(built.problem, candidate), limit))
          best = better(built.problem, best, candidate, fragility);
      }
    }
    if (best === before) return best.plan;
  }
}

interface Steadied {
  readonly plan: Plan;
  readonly fragility: number;
}

function better(problem: Problem, best: Steadied, plan: Plan, fragility: (plan: Plan) => number): Steadied {
  const chance = fragility(plan);
  const isLess = chance < best.fragility - leastGain;
  return isLess && checkPlan(problem, plan).faults.length === 0 ? { plan, fragility: chance } : best;
}

/** A smaller gain is rounding. */
const leastGain = 1e-9;

function isAsGood(cost: PlanCost, limit: PlanCost): boolean {
  const money = (of: PlanCost) => of.travel + of.packs + of.changes + of.endShort;
  return (
    cost.unmet <= limit.unmet &&
    cost.belowCritical <= limit.belowCritical &&
    cost.belowMinimum <= limit.belowMinimum &&
    money(cost) <= money(limit) + 0.5
  );
}
