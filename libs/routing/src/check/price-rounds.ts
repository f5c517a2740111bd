import type { PlanCost } from '../plan.js';
import type { Problem } from '../problem.js';
import type { Round } from './round.js';
import { packsOf, type StockDay } from './stock-faults.js';

/** Cost of the rounds and of the stock that they leave, in cents, worked out for the check alone. */
export function priceRounds(
  problem: Problem,
  rounds: readonly Round[],
  stock: readonly (readonly StockDay[])[],
): PlanCost {
  const cost = {
    travel: 0,
    packs: 0,
    changes: 0,
    endShort: 0,
    belowCushion: 0,
    belowMinimum: 0,
    belowCritical: 0,
    unmet: 0,
  };
  for (const round of rounds) {
    cost.travel += round.cost;
    cost.packs += packsOf(round) * (problem.stores[round.source].supply?.packCost ?? 0);
  }
  cost.changes = missingVisits(problem, rounds) * problem.changePrice;
  problem.stores.forEach(({ prices, cushion, minimum, critical, endTarget, opening }, s) => {
    for (const { closing, unmet } of stock[s]) {
      cost.unmet += unmet * prices.unmet;
      if (closing < cushion) cost.belowCushion += (cushion - closing) * prices.belowCushion;
      if (closing < minimum) cost.belowMinimum += (minimum - closing) * prices.belowMinimum;
      if (closing < critical) cost.belowCritical += (critical - closing) * prices.belowCritical;
    }
    const end = stock[s].at(-1)?.closing ?? opening;
    if (end < endTarget) cost.endShort += (endTarget - end) * prices.belowEndTarget;
  });
  const { travel, packs, changes, endShort, belowCushion, belowMinimum, belowCritical, unmet } = cost;
  const total = travel + packs + changes + endShort + belowCushion + belowMinimum + belowCritical + unmet;
  return { ...cost, total };
}

function missingVisits(problem: Problem, rounds: readonly Round[]): number {
  const used = new Set<Round>();
  let missing = 0;
  for (const { vehicle, day, stops } of problem.standing) {
    const kept = rounds.find(
      (round) =>
        !used.has(round) &&
        round.vehicle === vehicle &&
        round.day === day &&
        round.stops.length === stops.length &&
        round.stops.every((stop, i) => stop === stops[i]),
    );
    if (kept) used.add(kept);
    else missing++;
  }
  return missing;
}
