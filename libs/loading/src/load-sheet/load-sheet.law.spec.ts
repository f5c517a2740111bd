import { kilograms, litres, nauticalMiles, pounds } from '@drumline/units';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exampleRequest, exampleType } from '../example-flight.js';
import { exampleLoad } from '../named-load/example-load.js';
import type { NamedLoad } from '../named-load/named-load.js';
import { sheetOf } from './example-sheet.js';
import type { LoadSheet } from './load-sheet.js';
import { readSquareCode } from './square-text.js';

// The same places for every load: their sun is worked out once.
const route = exampleRequest(['BASE', 'NEAR', 'FAR', 'BASE']);
const positions = exampleType.configurations[0]!.drumPositions.map(({ id }) => id);

/** Loads of two stops: any drums in any positions, freight in the net, any distances, any operating weight. */
const loads: fc.Arbitrary<NamedLoad> = fc
  .record({
    drums: fc.array(
      fc.record({ kg: fc.integer({ min: 1700, max: 2000 }), off: fc.integer({ min: 0, max: 1 }) }),
      { maxLength: 6 },
    ),
    freightLb: fc.option(fc.double({ min: 1, max: 500, noNaN: true })),
    distance: fc.integer({ min: 200, max: 900 }),
    operating: fc.double({ min: 4400, max: 4600, noNaN: true }),
    uplift: fc.boolean(),
  })
  .map(({ drums, freightLb, distance, operating, uplift }) => {
    const leg = { distanceNm: nauticalMiles(distance / 10), upliftOnArrival: uplift };
    const request = { ...route, legs: route.legs.map((one) => ({ ...one, ...leg })) };
    const [cabin] = exampleType.configurations;
    const type = { ...exampleType, configurations: [{ ...cabin!, operatingWeightLb: pounds(operating) }] };
    const named = drums.map(({ kg, off }, index) => ({
      number: `${index}`.padStart(4, '0'),
      batch: 'J27-012',
      grossKg: kilograms(kg / 10),
      tareKg: kilograms(20),
      litres: litres(200),
      offAfterLeg: off,
      position: positions[index]!,
    }));
    const load = exampleLoad(['BASE', 'NEAR', 'FAR', 'BASE'], named, { ...request, type });
    const cargo =
      freightLb === null
        ? []
        : [{ name: 'stores', weightLb: pounds(freightLb), place: 'NET', firstLeg: 0, lastLeg: 1 }];
    return { ...load, cargo };
  });

/** Adds the rows as a hand would; every sum met on the way must be the printed one. */
function addByHand(sheet: LoadSheet): void {
  for (const [index, leg] of sheet.legs.entries()) {
    let total = 0;
    for (const { kind, lb, label, limit } of leg.rows) {
      expect(Number.isInteger(lb), label).toBe(true);
      if (kind === 'start') total = lb;
      if (kind === 'plus') total += lb;
      if (kind === 'minus') total -= lb;
      if (kind === 'sum') expect(total, `${leg.from}-${leg.to} ${label}`).toBe(lb);
      if (limit) expect(limit.spareLb).toBe(limit.lb - lb);
    }
    const drums = sheet.drums.filter(({ offAfterLeg }) => index <= offAfterLeg);
    const cargo = sheet.cargo.filter(({ firstLeg, lastLeg }) => firstLeg <= index && index <= lastLeg);
    const column = [...drums, ...cargo].reduce((sum, { lb }) => sum + lb, 0);
    expect(column).toBe(leg.totals.loadLb);
  }
}

describe('laws of the load sheet', () => {
  it('Printed sums: the printed integers of 1,000 random loads add up to the printed totals', () => {
    fc.assert(
      fc.property(loads, (load) => addByHand(sheetOf(load))),
      { numRuns: 1000 },
    );
  });

  it('the fuel line adds up to the fuel at start-up', () => {
    fc.assert(
      fc.property(loads, (load) => {
        const { fuelWords, legs } = sheetOf(load);
        const [parts, total] = fuelWords.slice(fuelWords.indexOf(': ') + 2).split(' = ');
        const poundsOf = (part: string) =>
          Number(/(\S+) lb$/.exec(part)![1]!.replace(',', '').replace('−', '-'));
        const added = parts!.split(' + ').reduce((sum, part) => sum + poundsOf(part), 0);
        expect(added).toBe(legs[0]!.rows.find(({ label }) => label === 'fuel at start-up')!.lb);
        expect(Number(total!.split(' lb')[0]!.replace(',', ''))).toBe(added);
      }),
    );
  });

  it('the code square says every drum, load and take-off weight, and bears the check code of the sheet', () => {
    fc.assert(
      fc.property(loads, (load) => {
        const sheet = sheetOf(load);
        expect(readSquareCode(sheet.square)).toEqual({ ok: true, checkCode: sheet.checkCode });
        for (const { number, position, lb } of sheet.drums)
          expect(sheet.square).toMatch(new RegExp(`^${position} ${number} .* ${lb} LB`, 'm'));
        for (const { from, to, totals } of sheet.legs) {
          expect(sheet.square).toContain(`TAKE-OFF ${from} ${totals.takeoffLb} LB`);
          if (totals.items.length > 0)
            expect(sheet.square).toMatch(new RegExp(`^${from}-${to} .* LOAD ${totals.loadLb} LB$`, 'm'));
        }
      }),
      { numRuns: 100 },
    );
  });

  it('a sheet holds only when no limit on it is passed and every balance is inside', () => {
    fc.assert(
      fc.property(loads, (load) => {
        const sheet = sheetOf(load);
        if (!sheet.holds) return;
        for (const row of sheet.legs.flatMap(({ rows }) => rows.filter(({ kind }) => kind === 'sum'))) {
          expect(row.limit!.holds).toBe(true);
          expect(row.cg!.inside).toBe(true);
        }
      }),
      { numRuns: 100 },
    );
  });
});
