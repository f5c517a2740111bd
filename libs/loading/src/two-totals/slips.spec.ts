import { kilograms, pounds } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { items, kinds, question, takeoff, words } from '../testing/f05-totals.js';
import { compareTotals } from './compare-totals.js';
import type { SheetItem } from './sheet-item.js';

describe('a slip within the tolerance', () => {
  it('is named: 2,387 for 2,378 agrees within 10 lb, and has two digits changed over', () => {
    const compared = compareTotals(question(2387, { toleranceLb: pounds(10) }));
    expect(compared).toMatchObject({
      agrees: true,
      differenceLb: 9,
      advice: 'Within the tolerance. A slip may still be in it: look again.',
    });
    expect(compared.slips.map(({ kind }) => kind)).toEqual(['digits swapped']);
    expect(compared.slips[0]!.words).toContain('with 7 and 8 changed over');
  });

  it('a rounding is no slip', () => {
    expect(compareTotals(question(2380, { toleranceLb: pounds(10) }))).toMatchObject({
      advice: 'Within the tolerance.',
      slips: [{ kind: 'rounding' }],
    });
  });
});

describe('slips that would explain a difference', () => {
  it('digits swapped: 8,528 and 8,258 are 270 lb apart', () => {
    const compared = compareTotals(takeoff(8258));
    expect(compared).toMatchObject({
      agrees: false,
      differenceLb: 270,
      words: '8,528 lb and 8,258 lb: 270 lb apart',
    });
    expect(compared.slips[0]).toMatchObject({ kind: 'digits swapped' });
    expect(compared.slips[0]!.words).toContain('with 5 and 2 changed over');
  });

  it('digits swapped in one weight of the column: 395 read as 359', () => {
    expect(words(question(2378 - 36))).toEqual([
      '36 lb apart. Two digits of the weight of 0447 in R1L, and of 0450 in R2R may be changed over in one of the sums.',
    ]);
  });

  it('a drum left out, with its number and position', () => {
    expect(kinds(question(1983))).toEqual(['left out']);
    expect(words(question(1983))[0]).toMatch(/^395 lb apart. That is the weight of 0447 in R1L, and of/);
  });

  it('only what fits: 0448 and 0451 weigh 396 lb, and are not named beside 395', () => {
    expect(words(question(1983))[0]).not.toMatch(/0448|0449|0451|0452/);
    expect(words(question(1982))[0]).toMatch(/^396 lb apart. That is the weight of 0448 in R1R, and of 0451/);
    expect(words(question(2378 - 394))[0]).toMatch(
      /^394 lb apart. Within 1 lb that is the weight of 0447 in R1L, and of 0450 in R2R\./,
    );
    expect(kinds(question(2378 - 393))).toEqual([]);
  });

  it('of many that fit two are named, and how many more', () => {
    const many = [...items, ...items].map((item) => ({ ...item, kg: kilograms(180) }));
    expect(words(question(4764 - 397, { bySheetLb: pounds(4764), items: many }))[0]).toContain(
      'the weight of 0447 in R1L, and of 0448 in R1R, and of 10 more.',
    );
  });

  it('the take-off weight without the load, and with it twice', () => {
    expect(words(takeoff(8528 - 2378))).toEqual([
      '2,378 lb apart. The whole load is 2,378 lb. One figure may be without the load.',
    ]);
    expect(words(takeoff(8528 + 2378))).toEqual([
      '2,378 lb apart. The whole load is 2,378 lb. One figure may have the load twice.',
    ]);
  });

  it('the take-off weight without the fuel, at take-off or at start-up', () => {
    expect(words(takeoff(8528 - 1170))).toEqual([
      '1,170 lb apart. The fuel at take-off is 1,170 lb. One figure may be without the fuel.',
    ]);
    expect(words(takeoff(8528 - 1200))).toEqual([
      '1,200 lb apart. The fuel at start-up is 1,200 lb. One figure may be without the fuel.',
    ]);
  });

  it('two drums left out, or counted twice', () => {
    expect(words(question(2378 - 794))).toEqual([
      '794 lb apart, as 0448 in R1R and 0449 in R2L, or another two of the same weights: both left out of one figure.',
    ]);
    expect(kinds(takeoff(8528 + 791))).toEqual(['two weights']);
  });

  it('two drums in kg; one left out and another in kg', () => {
    expect(words(question(2378 - 432))[0]).toContain(
      '0447 in R1L and 0448 in R1R, or another two of the same weights: both added as kg in one figure.',
    );
    expect(words(question(2378 - 395 - 216))[0]).toMatch(
      /the first left out, the second added as kg, in one/,
    );
  });

  it('two slips at once are not looked for where one explains it', () => {
    // 791 lb is 0447 and 0448, and the box of stores as well.
    const stores: SheetItem = { name: 'stores in NET1', kg: kilograms(358.8), tareKg: null };
    const asked = question(2378, { bySheetLb: pounds(2378 + 791), items: [...items, stores] });
    expect(kinds(asked)).toEqual(['left out']);
  });

  it('a drum counted twice', () => {
    expect(kinds(question(2776))).toEqual(['counted twice']);
    expect(words(question(2776))[0]).toContain('0449 in R2L, and of 0452 in R3R');
  });

  it('kilograms in the pounds box, for the load and for the whole aeroplane', () => {
    expect(kinds(question(1078))).toEqual(['kg for lb']);
    expect(kinds(takeoff(3868))).toEqual(['kg for lb']);
  });

  it('kilograms are those of the sheet, by the tenth, in every sentence', () => {
    expect(words(question(1078))).toEqual(['The load is 2,378 lb, 1,078.2 kg. One figure may be in kg.']);
    expect(words(question(1079))).toEqual(words(question(1078)));
    // 8,528 lb times 0.45359237.
    expect(words(takeoff(3868))).toEqual([
      'The take-off weight is 8,528 lb, 3,868.2 kg. One figure may be in kg.',
    ]);
  });

  it('a product is what it says it is, also where the typed figure lies a pound or two beside it', () => {
    const said = '2,378 lb times 2.2046 is 5,243 lb. One figure may be converted once too often.';
    expect(words(question(5243))).toEqual([said]);
    expect(words(question(5245))).toEqual([said]);
  });

  it('one weight added in kg: 179 for 395', () => {
    expect(kinds(question(2378 - 216))).toEqual(['kg for lb']);
  });

  it('the load added in kg in a take-off weight', () => {
    expect(kinds(takeoff(8528 - 1300))).toContain('kg for lb');
    expect(words(takeoff(8528 - 1300))[0]).toContain('1,078.2 kg');
  });

  it('pounds taken for kilograms and converted again', () => {
    expect(kinds(question(5243))).toEqual(['lb for kg']);
  });

  it('one weight taken for kilograms: 395 lb added as 871', () => {
    expect(kinds(question(2378 + 476))).toEqual(['lb for kg']);
  });

  it('fuel only, without the drums; and one drum without its own weight', () => {
    expect(words(question(2378 - 262))[0]).toContain('6 empty drums weigh 118.2 kg, 261 lb');
    expect(kinds(question(2378 - 42))).toEqual(['gross for net']);
  });

  it('fuel only in the whole column: drum by drum, with every drum at its planning weight, or rounded down', () => {
    // 6 × 20 kg are 264.6 lb; 160 kg are 352.7 lb, six times 352 lb are 2,112 lb.
    for (const net of [2378 - 261, 2378 - 264, 2378 - 265, 2112, 2118]) {
      expect(kinds(question(net)), `${net}`).toContain('gross for net');
      expect(kinds(takeoff(8528 - 2378 + net)), `${net}`).toContain('gross for net');
    }
  });

  it('landing weight for take-off weight; where a drum weighs about the same, both are said', () => {
    expect(words(takeoff(8131))).toEqual([
      '397 lb apart. The fuel from take-off to landing is 397 lb. One figure may be the landing weight.',
      expect.stringMatching(/^397 lb apart. Within 1 lb that is the weight of 0448/),
    ]);
    expect(kinds(takeoff(8131, { tripFuelLb: pounds(350) }))).toEqual(['left out']);
    expect(kinds(takeoff(8528 + 397))).not.toContain('landing weight');
    expect(kinds(question(2378 - 397))).not.toContain('landing weight');
  });

  it('the aeroplane itself left out: load and fuel alone', () => {
    expect(words(takeoff(3548))).toEqual([
      '4,980 lb apart. The aeroplane with its crew is 4,980 lb. One figure may be the load and the fuel alone.',
    ]);
  });

  it('the fuel added in kg, at take-off or at start-up', () => {
    // 1,170 lb are 530.7 kg, 639.3 lb less; 1,200 lb are 544.3 kg, 655.7 lb less.
    expect(words(takeoff(7889))).toEqual([
      '639 lb apart. The fuel is 1,170 lb, 530.7 kg; one figure may have its kg added as lb.',
    ]);
    expect(kinds(takeoff(8528 - 656))).toEqual(['kg for lb']);
  });

  it('ramp weight for take-off weight', () => {
    expect(kinds(takeoff(8558))).toContain('before taxi');
  });

  it('the plan for the real drums', () => {
    expect(kinds(takeoff(8531, { toleranceLb: pounds(0), items: items.slice(0, 2) }))).toContain(
      'planned weight',
    );
  });

  it('another drum: a part-used one taken for one on the sheet', () => {
    const otherDrums = [{ name: '0391', kg: kilograms(102.4), tareKg: kilograms(20.4) }];
    // 226 lb for 395 lb is 169 lb less.
    expect(words(question(2378 - 169, { otherDrums }))).toEqual([
      '169 lb apart, as 0391 for 0447 in R1L, or 0391 for 0450 in R2R. Read the drum numbers again.',
    ]);
  });

  it('one digit misread: 1 to 9 times a power of ten', () => {
    expect(kinds(question(2378 + 500))).toEqual(['one digit']);
    expect(kinds(takeoff(8528 - 70))).toEqual(['one digit']);
  });

  it('a digit too few', () => {
    expect(kinds(question(238))).toEqual(['ten times']);
  });

  it('rounding of the printed column, and then nothing else is looked for', () => {
    expect(kinds(question(2377))).toEqual(['rounding']);
    expect(words(question(2377))[0]).toContain('can differ by up to 3 lb');
  });

  it('none that we know', () => {
    expect(compareTotals(question(2378 - 137))).toMatchObject({
      slips: [],
      advice: 'No slip that we know. Count the drums, then add both again.',
    });
  });

  it('no word says which total is right', () => {
    for (const typed of [1078, 1583, 1946, 1983, 2116, 2336, 2342, 2377, 2387, 2776, 2878, 5243])
      for (const { title, words: said } of compareTotals(question(typed)).slips)
        expect(`${title} ${said}`).not.toMatch(/\b(right|wrong|correct|the sheet is|your total)\b/i);
  });
});
