import { describe, expect, it } from 'vitest';
import { gapScale } from './gap-scale.js';

describe('the gap ruler', () => {
  it('has floor and plan well apart, and the plan right of the floor', () => {
    for (const gap of [1, 6, 237, 1008, 20_000]) {
      const { floor, plan, ticks } = gapScale(55_218 - gap, 55_218);
      expect(floor).toBeGreaterThan(0.2);
      expect(plan).toBeLessThan(0.8);
      expect(plan - floor).toBeGreaterThan(0.4);
      expect(ticks.every(({ at }) => at >= 0 && at <= 1)).toBe(true);
      expect(ticks.length).toBeLessThan(30);
    }
  });
});
