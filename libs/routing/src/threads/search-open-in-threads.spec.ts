import { describe, expect, it } from 'vitest';
import { randomFrom } from '../index.js';
import { randomOpenProblem } from '../testing/random-open-problem.js';
import { searchOpenInThreads } from './search-open-in-threads.js';

// The workers run from the build: `npm run build` comes first.
const problem = randomOpenProblem(randomFrom(5), { sites: 8, days: 4, demand: 9, vehicles: 3 });
const options = { seed: 5, clock: () => 0 };

describe('searchOpenInThreads', () => {
  it('ends when it is told to stop', async () => {
    const budget = { iterations: Number.MAX_SAFE_INTEGER };
    const found = await searchOpenInThreads(1)(problem, { ...options, budget, shouldStop: () => true });
    expect(found.iterations).toBeLessThan(budget.iterations);
  }, 60_000);
});
