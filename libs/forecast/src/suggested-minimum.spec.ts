import { days, litres, litresPerDay } from '@drumline/units';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { suggestedMinimum } from './suggested-minimum.js';

const steady = { mean: litresPerDay(180), deviation: litresPerDay(0) };
const uneven = { mean: litresPerDay(180), deviation: litresPerDay(90) };
const onTime = { mean: days(4), deviation: days(0) };

describe('suggested minimum', () => {
  it('steady use and a lead time kept need no safety stock', () => {
    expect(suggestedMinimum(steady, onTime, litres(400), 0.95)).toEqual({
      minimum: 1120,
      leadTimeUse: 720,
      safetyStock: 0,
      reserve: 400,
    });
  });

  it('an even chance of running into the reserve needs no safety stock either', () => {
    expect(suggestedMinimum(uneven, onTime, litres(400), 0.5).safetyStock).toBe(0);
  });

  it('its three parts add up, and a better service level never lowers it', () => {
    const level = fc.double({ min: 0.5, max: 0.999, noNaN: true });
    fc.assert(
      fc.property(level, level, fc.double({ min: 0, max: 5, noNaN: true }), (one, other, deviation) => {
        const late = { mean: days(4), deviation: days(deviation) };
        const [low, high] = [Math.min(one, other), Math.max(one, other)].map((service) =>
          suggestedMinimum(uneven, late, litres(400), service),
        );
        expect(low!.minimum).toBe(low!.leadTimeUse + low!.safetyStock + low!.reserve);
        // Sums of the same parts differ in the last digit.
        expect(high!.minimum).toBeGreaterThanOrEqual(low!.minimum - 1e-6);
      }),
    );
  });
});
