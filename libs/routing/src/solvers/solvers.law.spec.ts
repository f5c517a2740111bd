import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkPlan } from '../check-plan.js';
import { costOf } from '../cost.js';
import type { Plan } from '../plan.js';
import type { Problem } from '../problem.js';
import { randomFrom } from '../random.js';
import { bruteForce } from '../testing/brute-force.js';
import { randomProblem, type Size } from '../testing/random-problem.js';
import { validate } from '../validate.js';
import { handRule } from './hand-rule.js';
import { search } from './search/search.js';

const small: Size = {
  days: 4,
  caches: 4,
  vehicles: 3,
  routes: 12,
  booked: 2,
  crews: 3,
  legPacks: 4,
  hoursPerDay: 6,
};
const tiny: Size = {
  days: 2,
  caches: 2,
  vehicles: 2,
  routes: 3,
  booked: 1,
  crews: 2,
  legPacks: 2,
  hoursPerDay: 4,
};

const run = (problem: Problem, from: Plan, iterations: number, seed = 1) =>
  search(problem, from, { seed, budget: { iterations }, clock: () => 0 });

const plannable = (size: Size) =>
  fc
    .integer()
    .map((seed) => randomProblem(randomFrom(seed), size))
    .filter((problem) => validate(problem).length === 0);

describe('solvers', () => {
  it('every plan of the hand rule and of the search passes the check, and costs what it says', () => {
    fc.assert(
      fc.property(plannable(small), (problem) => {
        const byHand = handRule(problem);
        const found = run(problem, byHand, 25);
        for (const plan of [byHand, found.plan]) {
          const { faults, cost } = checkPlan(problem, plan);
          expect(faults).toEqual([]);
          expect(costOf(problem, plan).total).toBeCloseTo(cost.total, 3);
        }
        expect(costOf(problem, found.plan).total).toBeCloseTo(found.cost, 3);
        expect(found.cost).toBeLessThanOrEqual(costOf(problem, byHand).total + 1e-6);
      }),
      { numRuns: 1000 },
    );
  }, 120_000);

  it('the search finds the cheapest of all plans of a tiny problem', () => {
    fc.assert(
      fc.property(plannable(tiny), (problem) => {
        expect(run(problem, handRule(problem), 400).cost).toBeCloseTo(bruteForce(problem).cost, 3);
      }),
      { numRuns: 25, seed: 7 },
    );
  }, 120_000);

  it('the same seed and iterations give the same plan', () => {
    const problem = randomProblem(randomFrom(4), small);
    const from = handRule(problem);
    expect(run(problem, from, 200, 3)).toEqual(run(problem, from, 200, 3));
  });
});
