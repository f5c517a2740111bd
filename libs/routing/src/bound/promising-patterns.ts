import { eachRouteDay } from './flat-routes.js';
import type { RelaxationBound } from './lower-bound.js';
import type { Pattern } from './relaxation.js';

/** Patterns that a plan cheaper than `below` (cents) may use, on top of the bound: reduced cost within the gap. */
export interface PromisingPatterns {
  readonly patterns: readonly Pattern[];
  /** All of them are here; else the `limit` with the least reduced cost. */
  readonly complete: boolean;
}

export function promisingPatterns(bound: RelaxationBound, below: number, limit: number): PromisingPatterns {
  const found: { pattern: Pattern; reducedCost: number }[] = [];
  let within = gapOf(bound, below);
  let complete = true;
  eachRouteDay(bound.pricing.flat, bound.relaxation.problem.days, (route, day) => {
    for (const { drops, reducedCost } of bound.pricing.dropsWithin(route, day, within))
      if (drops.some((drop) => drop > 0)) found.push({ pattern: { route, day, drops }, reducedCost });
    if (found.length <= 2 * limit) return;
    // Too many to hold: only the better half is worth going on with.
    found.sort((a, b) => a.reducedCost - b.reducedCost);
    found.length = limit;
    within = found[limit - 1].reducedCost;
    complete = false;
  });
  found.sort((a, b) => a.reducedCost - b.reducedCost);
  return {
    patterns: found.slice(0, limit).map(({ pattern }) => pattern),
    complete: complete && found.length <= limit,
  };
}

/** Routes that a plan cheaper than `below` (cents) may use on some day; indices into `problem.routes`. */
export function promisingRoutes(bound: RelaxationBound, below: number): number[] {
  const within = gapOf(bound, below);
  const { flat } = bound.pricing;
  const { problem } = bound.relaxation;
  const kept = new Set<number>();
  eachRouteDay(flat, problem.days, (route, day, condition) => {
    if (route < problem.routes.length && !kept.has(route))
      if (bound.pricing.leastReducedCost(route, day, condition, within) <= within) kept.add(route);
  });
  return [...kept].filter((route) => flat.group[route] >= 0).sort((a, b) => a - b);
}

/** Cost units between the bound and the plan to beat, and a little for the solver's tolerances. */
const gapOf = ({ bound, relaxation }: RelaxationBound, below: number) =>
  (Math.max(0, below - bound) + 1) / relaxation.units.centsPerCost;
