import { describe, expect, it } from 'vitest';
import { wholeMoney } from './add-up.js';
import { softTuesday } from './testing/soft-tuesday.js';
import { totalRows } from './total-rows.js';

describe('totals', () => {
  it('add up as printed, down and across, with what each base gives and has left', () => {
    const rows = totalRows(softTuesday, 'cr');
    const [flown, fuel, handling, whole] = rows;
    expect([flown!.rise, fuel!.rise, handling!.rise, whole!.rise]).toEqual([-876, 1300, -18, 406]);
    expect(whole).toMatchObject({ before: 55_218, after: 55_624, isSum: true });
    expect(rows.find(({ name }) => name === 'From XMER')).toMatchObject({ before: 56, after: 66, rise: 10 });
    expect(rows.find(({ name }) => name === 'Left at XMER')).toMatchObject({ rise: -2000, unit: 'L' });
  });

  it('hours rise in the totals as under the list, to the hundredth, and add up across', () => {
    const { before, after } = softTuesday.totals;
    const hours = { before: { ...before, blockHours: 18.886 }, after: { ...after, blockHours: 19.048 } };
    const block = totalRows({ ...softTuesday, totals: hours }, 'cr').find(({ name }) => name === 'Block');
    // 18.89 to 19.05 h, and under the list 19.048 - 18.886 = 0.16 h.
    expect(block).toMatchObject({ before: 18.89, rise: 0.16, after: 19.05, digits: 2 });
  });

  it('three parts of 33.4 are 33, 34 and 33: together the 100 that are printed', () => {
    expect(wholeMoney([3340, 3340, 3340])).toEqual([33, 34, 33]);
  });
});
