import { describe, expect, it } from 'vitest';
import { printScale } from './print-scale.js';

const groups = (...lengths: number[]) => lengths.map((length) => ({ lines: Array(length).fill(null) }));

describe('the print of the differences', () => {
  it('is at full size as long as everything stands on the page, and smaller line by line beyond', () => {
    expect(printScale(groups(2, 1, 2, 0, 2))).toBe(1);
    expect(printScale(groups(6, 5, 6, 2, 2))).toBeLessThan(0.9);
    expect(printScale(groups(6, 5, 6, 2, 2))).toBeGreaterThan(0.7);
  });
});
