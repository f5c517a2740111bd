import type { PlanCost, Proof } from '@drumline/routing';
import { describe, expect, it } from 'vitest';
import { moneyGap } from './money-gap.js';

const tiers = (money: number, belowMinimum: number): PlanCost => ({
  travel: money,
  packs: 0,
  changes: 0,
  endShort: 0,
  belowCushion: 0,
  belowMinimum,
  belowCritical: 0,
  unmet: 0,
  total: money + belowMinimum,
});
const proof = (objective: number, bound: number | null): Proof => ({
  objective,
  bound,
  gap: null,
  seconds: 1,
  solver: 'test',
  seed: 1,
  iterations: 1,
});

describe('the gap in money', () => {
  it('is a share of the money, not of the price of a shortage that no plan avoids', () => {
    expect(moneyGap(tiers(1000, 9000), proof(10_000, 9_980))).toEqual({ savedAtMost: 20, share: 0.02 });
  });

  it('is nothing where the bound is reached, and unknown without a bound', () => {
    expect(moneyGap(tiers(1000, 9000), proof(10_000, 10_000))).toEqual({ savedAtMost: 0, share: 0 });
    expect(moneyGap(tiers(1000, 0), proof(1000, null))).toBeNull();
    expect(moneyGap(tiers(1000, 0), proof(1000, -50_000))).toBeNull();
  });
});
