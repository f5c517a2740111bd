import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkPlan } from '../check-plan.js';
import { costOf } from '../cost.js';
import type { Problem } from '../problem.js';
import { randomFrom } from '../random.js';
import { handRule } from '../solvers/hand-rule.js';
import { search } from '../solvers/search/search.js';
import { bruteForce } from '../testing/brute-force.js';
import { randomProblem, type Size } from '../testing/random-problem.js';
import { validate } from '../validate.js';
import { lowerBound } from './lower-bound.js';
import { polish } from './polish.js';
import { wholeHorizon } from './whole-horizon.js';

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
const small: Size = {
  ...tiny,
  days: 4,
  caches: 4,
  vehicles: 3,
  routes: 12,
  booked: 2,
  crews: 3,
  legPacks: 4,
  hoursPerDay: 6,
};

const plannable = (size: Size) =>
  fc
    .integer()
    .map((seed) => randomProblem(randomFrom(seed), size))
    .filter((problem) => validate(problem).length === 0);

const clock = () => 0;
const A_CENT = 1;

/** The problem with those routes closed on every day that are not in the list. */
const restricted = (problem: Problem, kept: readonly number[]): Problem => ({
  ...problem,
  routes: problem.routes.map((route, r) =>
    kept.includes(r) ? route : { ...route, conditionByDay: route.conditionByDay.map(() => -1) },
  ),
});

/** Tiny problems with the cost of the cheapest of all their plans, found by trying every one. */
const solved = fc
  .sample(plannable(tiny), { numRuns: 25, seed: 11 })
  .map((problem) => ({ problem, optimum: bruteForce(problem).cost }));

describe('lower bound', () => {
  it.each(solved)(
    'is never above the cheapest plan, with every rule in the problem (%#)',
    async (tinyOne) => {
      const { problem, optimum } = tinyOne;
      const { bound, converged } = await lowerBound(problem, { clock });
      const plain = await lowerBound(problem, { clock, withCuts: false });
      expect(converged && plain.converged).toBe(true);
      expect(bound).toBeLessThanOrEqual(optimum + 1e-3);
      expect(plain.bound).toBeLessThanOrEqual(bound + 1e-3);
    },
  );

  it('holds whenever it is stopped, and only rises', async () => {
    await fc.assert(
      fc.asyncProperty(plannable(small), async (problem) => {
        const known = search(problem, handRule(problem), { seed: 1, budget: { iterations: 60 }, clock }).cost;
        const bounds: number[] = [];
        const full = await lowerBound(problem, { clock, onProgress: ({ bound }) => bounds.push(bound) });
        expect(bounds).toEqual([...bounds].sort((a, b) => a - b));
        expect(full.bound).toBeLessThanOrEqual(known + 1e-3);
        let rounds = 0;
        const stopped = await lowerBound(problem, {
          clock,
          onProgress: () => rounds++,
          shouldStop: () => rounds >= Math.ceil(full.rounds / 2),
        });
        expect(stopped.bound).toBeLessThanOrEqual(full.bound + 1e-3);
      }),
      { numRuns: 40 },
    );
  }, 60_000);

  it('begun from all days as one, it holds from the first and ends at the same bound', async () => {
    await fc.assert(
      fc.asyncProperty(plannable(small), async (problem) => {
        const { known: inAll } = await lowerBound(wholeHorizon(problem), { clock });
        const bounds: number[] = [];
        const full = await lowerBound(problem, { clock });
        const begun = await lowerBound(problem, {
          clock,
          inAll,
          onProgress: ({ bound }) => bounds.push(bound),
        });
        for (const bound of bounds) expect(bound).toBeLessThanOrEqual(full.bound + 1e-3);
        expect(begun.bound).toBeCloseTo(full.bound, 1);
      }),
      { numRuns: 40 },
    );
  }, 60_000);

  it('leaves out only routes that no cheaper plan travels', async () => {
    for (const { problem, optimum } of solved.slice(0, 12)) {
      const byHand = costOf(problem, handRule(problem)).total;
      const { routesKept } = await lowerBound(problem, { clock, upperBound: byHand });
      const amongKept = bruteForce(restricted(problem, routesKept)).cost;
      expect(Math.min(amongKept, byHand)).toBeCloseTo(optimum, 3);
    }
  }, 60_000);
});

describe('polish', () => {
  it('returns checked plans, and proves the cheapest of all where it says so', async () => {
    let proven = 0;
    for (const { problem, optimum } of solved) {
      const polished = await polish(problem, handRule(problem), { clock });
      expect(polished.bound).toBeLessThanOrEqual(optimum + A_CENT);
      if (polished.status === 'no answer') continue;
      const { faults, cost } = checkPlan(problem, polished.plan);
      expect(faults).toEqual([]);
      expect(cost.total).toBeCloseTo(polished.cost, 3);
      if (polished.bound < polished.cost - A_CENT) continue;
      proven++;
      expect(polished.cost).toBeLessThanOrEqual(optimum + A_CENT);
    }
    expect(proven).toBeGreaterThan(5);
  }, 60_000);

  it('improves or keeps plans of larger problems, never breaking a rule', async () => {
    await fc.assert(
      fc.asyncProperty(plannable(small), async (problem) => {
        const from = handRule(problem);
        const polished = await polish(problem, from, { clock });
        if (polished.status === 'no answer') return;
        expect(checkPlan(problem, polished.plan).faults).toEqual([]);
        expect(polished.cost).toBeLessThanOrEqual(costOf(problem, from).total + 1e-6);
      }),
      { numRuns: 20 },
    );
  }, 60_000);
});
