import { describe, expect, it } from 'vitest';
import { costOf } from '../../cost.js';
import { plain } from '../../testing/plain-problem.js';
import { emptyPlan } from '../empty-plan.js';
import { handRule } from '../hand-rule.js';
import { search } from './search.js';

describe('search', () => {
  it('goes on from a cheaper plan that others have found', () => {
    let now = 0;
    const better = search(plain, handRule(plain), { seed: 1, clock: () => 0, budget: { iterations: 300 } });
    // No route may be flown anew: what is cheaper has come from outside.
    const found = search(plain, emptyPlan(plain), {
      seed: 1,
      clock: () => (now += 500),
      budget: { iterations: 10 },
      routes: [],
      news: () => ({ plan: better.plan }),
    });
    expect(found.cost).toBeLessThanOrEqual(better.cost);
    expect(costOf(plain, emptyPlan(plain)).total).toBeGreaterThan(better.cost);
  });
});
