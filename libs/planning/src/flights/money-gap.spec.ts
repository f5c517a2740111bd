import type { PlanCost, Proof } from '@drumline/routing';
import { cents } from '@drumline/units';
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
  it('is a share of the cost that is printed, not of the price of a shortage that no plan avoids', () => {
    expect(moneyGap(tiers(1000, 9000), proof(10_000, 9_980), cents(1000))).toEqual({
      savedAtMost: 20,
      share: 0.02,
    });
    // Flights that stand whatever is planned, and 1,105 cr of 53,205 cr: 2.1 %.
    const gap = moneyGap(tiers(5_022_700, 0), proof(5_022_700, 4_912_200), cents(5_320_500))!;
    expect(gap).toEqual({ savedAtMost: 110_500, share: 110_500 / 5_320_500 });
    expect((gap.share * 100).toFixed(1)).toBe('2.1');
  });

  it('is nothing where the bound is reached, and unknown without a bound', () => {
    expect(moneyGap(tiers(1000, 9000), proof(10_000, 10_000), cents(0))).toEqual({
      savedAtMost: 0,
      share: 0,
    });
    expect(moneyGap(tiers(1000, 0), proof(1000, null), cents(1000))).toBeNull();
    expect(moneyGap(tiers(1000, 0), proof(1000, -50_000), cents(1000))).toBeNull();
    expect(moneyGap(tiers(1000, 0), proof(1000, 900), cents(0))).toBeNull();
  });
});
