import { describe, expect, it } from 'vitest';
import { printScale } from './print-scale.js';

const groups = (...lengths: number[]) => lengths.map((length) => ({ lines: Array(length).fill(null) }));

describe('the print of the differences', () => {
  it('is at full size as long as everything stands on the page, and a little smaller beyond', () => {
    expect(printScale(groups(2, 1, 2, 0, 1))).toBe(1);
    expect(printScale(groups(3, 3, 2, 0, 2))).toBeLessThan(1);
  });

  it('is never below eight points of its nine: about twenty lines stand on two pages at full size', () => {
    for (let lines = 0; lines < 60; lines++) expect(printScale(groups(lines)) * 9).toBeGreaterThanOrEqual(8);
    expect(printScale(groups(6, 5, 6, 2, 2))).toBe(1);
  });
});
