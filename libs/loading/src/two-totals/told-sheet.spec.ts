import { pounds } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { sheetOf } from '../load-sheet/example-sheet.js';
import { exampleLoad, standing } from '../named-load/example-load.js';
import {
  type OwnSheet,
  type ToldSheet,
  unlikeOwnCode,
  unlikeOwnSheet,
  whyDoesNotHold,
} from './told-sheet.js';

const sheet = sheetOf(exampleLoad(['BASE', 'NEAR', 'BASE'], [standing('0447', 'R1L')]));
const { totals } = sheet.legs[0]!;
const own: OwnSheet = {
  version: 2,
  figures: { totals, otherDrums: [] },
  standing: sheet,
  checkCode: 'U9XA',
  toleranceLb: pounds(10),
};
const asPrinted: ToldSheet = {
  means: 'paper',
  version: 2,
  loadLb: totals.loadLb,
  takeOffLb: totals.takeoffLb,
  checkCode: ' u9xa',
};
const told = (rest: Partial<ToldSheet>) => ({ ...asPrinted, ...rest });
const more = (lb: number) => pounds(totals.loadLb + lb);

describe('what a crew says stands on its sheet', () => {
  it('within the tolerance agrees', () => {
    expect(unlikeOwnSheet(own, asPrinted)).toEqual([]);
    expect(unlikeOwnSheet(own, told({ loadLb: more(10) }))).toEqual([]);
  });

  it('further apart is told with the arithmetic and by which means; never which is right', () => {
    const [words, ...others] = unlikeOwnSheet(own, told({ loadLb: more(11), means: 'radio' }));
    expect(words).toContain("The load by base's sheet of version 2, and as said by radio: ");
    expect(words).toContain('11 lb apart; 10 lb is accepted.');
    expect(words).not.toMatch(/is right|is wrong/);
    expect(others).toEqual([]);
    expect(unlikeOwnSheet(own, told({ loadLb: more(11) }))[0]).toContain('as written on paper');
  });

  it('is not compared where a phone or a screen has the sheet itself, or it is of another version', () => {
    const apart = { loadLb: more(500), checkCode: 'U9XC' };
    expect(unlikeOwnSheet(own, told(apart))).toHaveLength(2);
    for (const rest of [{ means: 'phone' }, { means: 'screen' }, { version: 1 }] as const)
      expect(unlikeOwnSheet(own, told({ ...apart, ...rest }))).toEqual([]);
  });

  it('its totals are not compared without a sheet or a tolerance of the operator; its code is', () => {
    const apart = told({ loadLb: more(500), checkCode: 'U9XC' });
    for (const lacking of [{ figures: null }, { toleranceLb: null }])
      expect(unlikeOwnSheet({ ...own, ...lacking }, apart)).toEqual([unlikeOwnCode('U9XA', 'U9XC', 2)]);
    expect(unlikeOwnSheet({ ...own, checkCode: null }, told({ checkCode: 'U9XC' }))).toEqual([]);
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

describe('a load that is reported', () => {
  const over = { ...own, standing: { holds: false, faults: ['BASE-NEAR: 4 lb over max take-off'] } };

  it('does not hold where its crew says so of its own sheet, whatever base knows', () => {
    const said = told({ means: 'phone', version: 1, doesNotHold: 'R3L: 101 lb over.' });
    const words = 'the load does not hold by the sheet it was loaded by: R3L: 101 lb over.';
    expect([whyDoesNotHold(own, said), whyDoesNotHold(over, said)]).toEqual([words, words]);
  });

  it("else by base's sheet of that version", () => {
    expect(whyDoesNotHold(own, asPrinted)).toBeNull();
    expect(whyDoesNotHold(over, asPrinted)).toBe(
      "the load does not hold by base's sheet: BASE-NEAR: 4 lb over max take-off.",
    );
    expect(whyDoesNotHold(over, told({ version: 1 }))).toBeNull();
    expect(whyDoesNotHold({ ...over, standing: null }, asPrinted)).toBeNull();
  });
});
