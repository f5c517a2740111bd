import { describe, expect, it } from 'vitest';
import { items, takeoff } from '../testing/f05-totals.js';
import { compareTotals } from './compare-totals.js';
import { itemTotals } from './sheet-item.js';

describe('the column of F05', () => {
  it('the printed pounds add up to 2,378 lb; 1,078.2 kg is 2,377 lb, and the pound between is explained', () => {
    const totals = itemTotals(items);
    expect(totals.lb).toBe(2378);
    expect(totals.kg).toBeCloseTo(1078.2, 9);
    expect(totals.kgAsLb).toBeCloseTo(2377.0, 1);
    expect(totals.roundingWords).toBe('1,078.2 kg is 2,377 lb, row by row 2,378 lb: 1 lb is rounding');
  });

  it('a column that rounds to its kg total needs no words', () => {
    expect(itemTotals(items.slice(0, 1)).roundingWords).toBeNull();
  });
});

describe('two totals that agree', () => {
  it('the aircraft says what the sheet says', () => {
    expect(compareTotals(takeoff(8528))).toEqual({
      agrees: true,
      differenceLb: 0,
      words: '8,528 lb and 8,528 lb: the same',
      slips: [],
      advice: 'Within the tolerance.',
    });
  });

  it('a difference of the tolerance agrees, a pound more does not', () => {
    expect(compareTotals(takeoff(8538)).agrees).toBe(true);
    expect(compareTotals(takeoff(8539)).agrees).toBe(false);
  });
});
