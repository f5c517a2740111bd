import { pounds } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { sheetOf } from '../load-sheet/example-sheet.js';
import { exampleLoad, standing } from '../named-load/example-load.js';
import { unlikeOwnCode, unlikeOwnTotals } from './told-sheet.js';

const sheet = sheetOf(exampleLoad(['BASE', 'NEAR', 'BASE'], [standing('0447', 'R1L')]));
const { totals } = sheet.legs[0]!;
const tolerance = pounds(10);
const told = (loadLb: number, means: 'paper' | 'radio' = 'paper') =>
  unlikeOwnTotals(
    { totals, otherDrums: [] },
    { means, version: 2, loadLb: pounds(loadLb), takeOffLb: totals.takeoffLb },
    tolerance,
  );

describe('what a crew says stands on its sheet', () => {
  it('within the tolerance agrees', () => {
    expect(told(totals.loadLb)).toEqual([]);
    expect(told(totals.loadLb + 10)).toEqual([]);
  });

  it('further apart is told with the arithmetic and by which means; never which is right', () => {
    const [words, ...more] = told(totals.loadLb + 11, 'radio');
    expect(words).toContain("The load by base's sheet of version 2, and as said by radio: ");
    expect(words).toContain('11 lb apart; 10 lb is accepted.');
    expect(words).not.toMatch(/is right|is wrong/);
    expect(more).toEqual([]);
    expect(told(totals.loadLb + 11)[0]).toContain('as written on paper');
  });
});

describe('a check code read off a sheet', () => {
  it('is the same in small letters too', () => {
    expect(unlikeOwnCode('U9XA', ' u9xa', 2)).toBeNull();
  });
  it('that is another one is told with both', () => {
    expect(unlikeOwnCode('U9XA', 'U9XC', 2)).toMatch(
      /version 2 is U9XA, and U9XC of the sheet .*not the same/,
    );
  });
});
