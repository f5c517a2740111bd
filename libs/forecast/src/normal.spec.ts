import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { normalLoss, normalQuantile, normalShareBelow } from './normal.js';

describe('the normal distribution', () => {
  it('the quantile of a share is where that share lies below', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 1 - 1e-6, noNaN: true }), (share) => {
        expect(normalShareBelow(normalQuantile(share))).toBeCloseTo(share, 12);
      }),
    );
  });

  it('is symmetric about 0, rises, and ends at 0 and 1', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -12, max: 12, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (z, up) => {
          expect(normalShareBelow(z) + normalShareBelow(-z)).toBeCloseTo(1, 12);
          expect(normalShareBelow(z + up)).toBeGreaterThanOrEqual(normalShareBelow(z) - 1e-15);
        },
      ),
    );
    expect(normalShareBelow(0)).toBe(0.5);
    expect(normalQuantile(0.5)).toBe(0);
    expect(normalShareBelow(40)).toBe(1);
    expect(normalShareBelow(-40)).toBe(0);
  });

  it('expects to lose what it lies below, and nothing far above', () => {
    expect(normalLoss(-6)).toBeCloseTo(6, 6);
    expect(normalLoss(6)).toBeCloseTo(0, 6);
  });

  it('a share of all or nothing has no quantile', () => {
    expect(() => normalQuantile(1)).toThrow(RangeError);
    expect(() => normalQuantile(0)).toThrow(RangeError);
    expect(() => normalQuantile(95)).toThrow(/between 0 and 1/);
  });
});
