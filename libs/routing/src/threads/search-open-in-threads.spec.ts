import { describe, expect, it } from 'vitest';
import { checkOpenPlan, randomFrom, searchOpen } from '../index.js';
import { solveWithHighs } from '../milp/index.js';
import { randomOpenProblem } from '../testing/random-open-problem.js';
import { searchOpenInThreads } from './search-open-in-threads.js';

// The workers run from the build: `npm run build` comes first.
const problem = randomOpenProblem(randomFrom(5), { sites: 8, days: 4, demand: 9, vehicles: 3 });
const options = { seed: 5, clock: () => 0 };

describe('searchOpenInThreads', () => {
  it('gives the best plan of the seeds', async () => {
    const budget = { iterations: 64 };
    const found = await searchOpenInThreads(2)(problem, { ...options, budget });
    const alone = await Promise.all(
      [5, 6].map((seed) => searchOpen(problem, { ...options, seed, budget, linear: solveWithHighs })),
    );
    expect(found.cost).toBe(Math.min(...alone.map(({ cost }) => cost)));
    expect(checkOpenPlan(problem, found.plan!).faults).toEqual([]);
    expect(found.iterations).toBe(128);
  }, 60_000);

  it('ends when it is told to stop', async () => {
    const budget = { iterations: Number.MAX_SAFE_INTEGER };
    const found = await searchOpenInThreads(1)(problem, { ...options, budget, shouldStop: () => true });
    expect(found.plan).not.toBeNull();
  }, 60_000);
});
