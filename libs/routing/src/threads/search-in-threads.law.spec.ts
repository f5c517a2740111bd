import { describe, expect, it } from 'vitest';
import { checkPlan, emptyPlan, randomFrom, search } from '../index.js';
import { randomProblem } from '../testing/random-problem.js';
import { searchInThreads } from './search-in-threads.js';

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
const options = { seed: 5, clock: () => 0 };

describe('searchInThreads', () => {
  it('gives the best plan of the seeds', async () => {
    const from = emptyPlan(problem);
    const budget = { iterations: 30 };
    const found = await searchInThreads(2)(problem, from, { ...options, budget });
    const alone = [5, 6].map((seed) => search(problem, from, { ...options, seed, budget }).cost);
    expect(checkPlan(problem, found.plan).cost.total).toBeCloseTo(Math.min(...alone), 3);
    expect(found.iterations).toBe(60);
  }, 60_000);

  it('ends when it is told to stop', async () => {
    const budget = { iterations: Number.MAX_SAFE_INTEGER };
    const found = await searchInThreads(1)(problem, emptyPlan(problem), {
      ...options,
      budget,
      shouldStop: () => true,
    });
    expect(checkPlan(problem, found.plan).faults).toEqual([]);
  }, 60_000);
});
