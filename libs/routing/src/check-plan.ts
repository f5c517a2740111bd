import type { Fault } from './check/fault.js';
import { crewFaults, crewFitFaults, vehicleFaults } from './check/hour-faults.js';
import { priceRounds } from './check/price-rounds.js';
import { readRounds } from './check/round.js';
import { deliveryFaults, stockDays, supplyFaults } from './check/stock-faults.js';
import type { Plan, PlanCost } from './plan.js';
import type { Problem } from './problem.js';

export type { Fault } from './check/fault.js';

/**
 * Every rule that a plan breaks (none: an empty list) and its cost in cents, recomputed from the problem by
 * code that shares nothing with the solvers or with `costOf`. Trips that cannot be made count for nothing.
 */
export function checkPlan(problem: Problem, plan: Plan): { faults: Fault[]; cost: PlanCost } {
  const { rounds, faults } = readRounds(problem, plan);
  const stock = problem.stores.map((_, store) => stockDays(problem, store, rounds));
  return {
    faults: [
      ...faults,
      ...problem.stores.flatMap((_, store) => deliveryFaults(problem, store, stock[store])),
      ...problem.stores.flatMap((_, source) => supplyFaults(problem, source, rounds)),
      ...problem.vehicles.flatMap((_, vehicle) => vehicleFaults(problem, vehicle, rounds)),
      ...crewFitFaults(problem, rounds),
      ...problem.crews.flatMap((_, crew) => crewFaults(problem, crew, rounds)),
    ],
    cost: priceRounds(problem, rounds, stock),
  };
}
