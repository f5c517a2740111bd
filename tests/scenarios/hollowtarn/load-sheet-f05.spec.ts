import { compareWithSheet, readSquareCode, type SheetTotals } from '@drumline/loading';
import { drawSquare } from '@drumline/loading/code-square';
import { pounds } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { namedLoad, numbers, rowOf, rowsOf, sheetOf, standing } from './sheet-of-flight.js';

describe('the load sheet of F05', () => {
  const rows = ['R1L', 'R1R', 'R2L', 'R2R', 'R3L', 'R3R'];
  const load = namedLoad('F05', standing(numbers(447, 6), 'XLOR', rows));
  const sheet = sheetOf('F05', load, 'FW3');
  const out = sheet.legs[0]!;

  // The worked sheet of the demo territory (`load_sheet_example`): invented data, checked against itself.
  it('has the weights of the worked example, in printed integers', () => {
    expect(sheet.drums.map(({ number, position, grossKg, lb }) => [number, position, grossKg, lb])).toEqual([
      ['0447', 'R1L', 179, 395],
      ['0448', 'R1R', 179.7, 396],
      ['0449', 'R2L', 180.4, 398],
      ['0450', 'R2R', 179, 395],
      ['0451', 'R3L', 179.7, 396],
      ['0452', 'R3R', 180.4, 398],
    ]);
    expect(rowsOf(out)).toEqual({
      'Operating weight': 4980,
      '6 drums, as weighed': 2378,
      'zero fuel': 7358,
      'fuel at start-up': 1200,
      taxi: 30,
      'take-off XALD': 8528,
      'fuel to XLOR': 397,
      'land XLOR, dry': 8131,
      'land XLOR, soft': 8131,
      'leave XLOR full, dry': 8131,
      'leave XLOR as planned, dry': 5753,
    });
    expect(sheet.holds).toBe(true);
  });

  it('holds them against the limits, dry and soft', () => {
    expect(rowOf(out, 'zero fuel').limit).toEqual({ lb: 8200, spareLb: 842, holds: true });
    expect(rowOf(out, 'take-off XALD').limit).toEqual({ lb: 8800, spareLb: 272, holds: true });
    expect(rowOf(out, 'land XLOR, dry').limit).toEqual({ lb: 8300, spareLb: 169, holds: true });
    expect(rowOf(out, 'land XLOR, soft').limit).toEqual({ lb: 7600, spareLb: -531, holds: false });
    // 8,300 lb at landing and 397 lb on the way there.
    expect(out.allowedTakeoffLb).toBe(8697);
    expect(out.binds).toBe(
      'Nearest limit: drum positions, 6 of 6; nearest weight XLOR strip landing limit 169 lb spare.',
    );
  });

  it('has its centre of gravity at 191.8 in without fuel and 192.4 in at take-off', () => {
    const zeroFuel = rowOf(out, 'zero fuel').cg!;
    const takeoff = rowOf(out, 'take-off XALD').cg!;
    expect(
      [zeroFuel.armIn, zeroFuel.forwardIn, zeroFuel.aftIn].map((arm) => Number(arm!.toFixed(1))),
    ).toEqual([191.8, 180.9, 193.8]);
    expect([takeoff.armIn, takeoff.forwardIn].map((arm) => Number(arm!.toFixed(1)))).toEqual([192.4, 183.4]);
  });

  it('says what the fuel is made of', () => {
    expect(sheet.fuelWords).toBe(
      'Fuel at start-up: taxi 30 lb + XLOR 397 lb + XALD 397 lb + 10 % contingency 79 lb + 45 min reserve 289 lb + rounding 8 lb = 1,200 lb. demo operations manual, fuel, revision 4.',
    );
  });

  it('when it is soft: takes 4, leaves 0451 and 0452', () => {
    expect(out.goBack.ifSoft!.words).toBe(
      'If XLOR is soft: take 4, leave 0451 and 0452 here. Lands with 7,337 lb.',
    );
  });

  it('the pound between 2,378 lb and 1,078.2 kg is explained', () => {
    expect(out.totals.roundingWords).toBe('1,078.2 kg is 2,377 lb, row by row 2,378 lb: 1 lb is rounding');
  });

  it('tells the pilot what dangerous goods are aboard, and nothing on the empty leg home', () => {
    expect(out.particulars.map(({ value }) => value)).toEqual(['UN 1863', '6 × steel drum 1A1', '1,200 L']);
    expect(sheet.legs[1]!.particulars).toEqual([]);
  });

  it('has a code square of the whole flight in plain words', () => {
    expect(readSquareCode(sheet.square)).toEqual({ ok: true, checkCode: sheet.checkCode });
    for (const number of numbers(447, 6))
      expect(sheet.square).toMatch(new RegExp(`^R\\d[LR] ${number} `, 'm'));
    expect(sheet.square).toContain('LAND XLOR - DRY 8131 LB LIMIT 8300 SPARE 169');
    expect(sheet.square).toContain(
      'XLOR SOFT: 8131 LB AGAINST 7550 LB TAKE-OFF LIMIT - 581 LB OVER. UNLOAD 2 DRUMS',
    );
    expect(sheet.square).toContain('IF XLOR IS SOFT: TAKE 4 - LEAVE 0451 AND 0452 HERE.');
    // 109 modules at 40 mm are 0.37 mm each.
    expect(drawSquare(sheet.square).side).toBeLessThanOrEqual(109);
  });

  describe('Two totals', () => {
    const compare = (totals: SheetTotals, of: 'load' | 'take-off weight', typed: number) =>
      compareWithSheet(
        { totals, otherDrums: [] },
        {
          of,
          bySheetLb: of === 'load' ? totals.loadLb : totals.takeoffLb,
          typedLb: pounds(typed),
          toleranceLb: sheet.toleranceLb,
        },
      );

    it('a take-off weight without the load, or without the fuel, says so', () => {
      const kinds = (typed: number) =>
        compare(out.totals, 'take-off weight', typed).slips.map(({ kind }) => kind);
      expect(kinds(8528 - 2378)).toEqual(['load left out']);
      expect(kinds(8528 - (out.totals.fuelLb - 30))).toEqual(['fuel left out']);
    });

    it('the hand total 2,378 lb and the aircraft’s 8,528 lb agree', () => {
      expect(compare(out.totals, 'load', 2378)).toMatchObject({ agrees: true, differenceLb: 0 });
      expect(compare(out.totals, 'take-off weight', 8528)).toMatchObject({ agrees: true, differenceLb: 0 });
    });

    it('8,258 lb for 8,528 lb: 270 lb apart, two digits changed over', () => {
      const compared = compare(out.totals, 'take-off weight', 8258);
      expect(compared).toMatchObject({ agrees: false, differenceLb: 270 });
      expect(compared.slips.map(({ kind }) => kind)).toEqual(['digits swapped']);
    });

    it('the plan said 8,531 lb', () => {
      expect(out.totals.plannedTakeoffLb).toBe(8531);
    });
  });
});
