import { checkPlan, handRule, validate } from '@drumline/routing';
import { describe, expect, it } from 'vitest';
import { problemOfNetwork } from './caches-network.js';
import { makeNetwork } from './make-network.js';

describe('makeNetwork', () => {
  it('gives networks that can be planned, with a hand plan that passes the check', () => {
    for (const seed of [1, 2, 3]) {
      const problem = problemOfNetwork(makeNetwork(seed));
      expect(validate(problem)).toEqual([]);
      expect(checkPlan(problem, handRule(problem)).faults).toEqual([]);
    }
  });

  it('is the same for the same seed, and another one for another', () => {
    expect(makeNetwork(7)).toEqual(makeNetwork(7));
    expect(makeNetwork(7).caches).not.toEqual(makeNetwork(8).caches);
  });
});
