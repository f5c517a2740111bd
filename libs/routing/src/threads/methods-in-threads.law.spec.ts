import { describe, expect, it } from 'vitest';
import { checkPlan, randomFrom, solve } from '../index.js';
import { lowerBound } from '../milp/index.js';
import { randomProblem } from '../testing/random-problem.js';
import { methodsInThreads } from './methods-in-threads.js';

// The workers run from the build: `npm run build` comes first.
const problem = randomProblem(randomFrom(4), {
  days: 4,
  caches: 4,
  vehicles: 3,
  routes: 12,
  booked: 2,
  crews: 3,
  legPacks: 4,
  hoursPerDay: 6,
});
const clock = () => performance.now();

describe('methodsInThreads', () => {
  it('gives a checked plan and the bound that one thread finds, or a better one', async () => {
    const outcome = await solve(problem, {
      seed: 1,
      clock,
      budget: { seconds: 3 },
      methods: methodsInThreads(2),
    });
    if (outcome.status !== 'solved') throw new Error('expected a plan');
    const { bound } = await lowerBound(problem, { clock });
    expect(checkPlan(problem, outcome.plan).faults).toEqual([]);
    expect(outcome.proof.bound).toBeGreaterThanOrEqual(bound - 1e-3);
    expect(outcome.proof.bound).toBeLessThanOrEqual(outcome.proof.objective + 1);
  }, 60_000);

  it('answers with the best plan so far when it is told to stop', async () => {
    const outcome = await solve(problem, {
      seed: 1,
      clock,
      budget: { seconds: 1000 },
      methods: methodsInThreads(2),
      shouldStop: () => true,
    });
    if (outcome.status !== 'solved') throw new Error('expected a plan');
    expect(checkPlan(problem, outcome.plan).faults).toEqual([]);
  }, 60_000);
});
