import { kilograms, pounds } from '@drumline/units';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { items, kinds, question, takeoff } from '../testing/f05-totals.js';
import { compareTotals } from './compare-totals.js';
import type { SheetItem } from './sheet-item.js';

// Made from the list of slips: any slip on any drum of the sheet is among those named, whichever figure has it.
describe('every slip is found on every drum', () => {
  const slipsOfItem: readonly (readonly [string, (lb: number, item: SheetItem) => number])[] = [
    ['left out', (lb) => -lb],
    ['counted twice', (lb) => lb],
    ['kg for lb', (lb, { kg }) => Math.round(kg) - lb],
    ['gross for net', (_, { tareKg }) => -Math.round(tareKg! / 0.45359237)],
  ];
  it.each(slipsOfItem)('%s', (kind, change) => {
    for (const item of items) {
      const typed = 2378 + change(Math.round(item.kg / 0.45359237), item);
      expect(kinds(question(typed)), `${item.name} ${typed}`).toContain(kind);
    }
  });
});

describe('what nobody did is not explained', () => {
  // Every difference of six drums, from more than rounding up to three of them. Measured: 7 in 100 of a load, and of a
  // take-off weight, are explained by one slip, 1 and 3 in 1,000 by two, none by more.
  const differences = Array.from({ length: 1185 }, (_, at) => at + 4);
  it.each([
    ['load', (apart: number) => question(2378 + apart)],
    ['take-off weight', (apart: number) => takeoff(8528 + apart)],
  ] as const)('most differences of a %s have no slip, and none has more than two', (_, ask) => {
    const named = differences.flatMap((apart) => [kinds(ask(-apart)).length, kinds(ask(apart)).length]);
    expect(named.filter((count) => count === 0).length / named.length).toBeGreaterThan(0.9);
    expect(Math.max(...named)).toBe(2);
  });
});

describe('laws of slips', () => {
  const lbOf = ({ kg }: SheetItem) => Math.round(kg / 0.45359237);
  const loads = fc.array(
    fc.record({ gross: fc.integer({ min: 1200, max: 2300 }), tare: fc.integer({ min: 160, max: 250 }) }).map(
      ({ gross, tare }): SheetItem => ({
        name: `drum of ${gross / 10} kg`,
        kg: kilograms(gross / 10),
        tareKg: kilograms(tare / 10),
      }),
    ),
    { minLength: 2, maxLength: 8 },
  );
  /** By slip: what it makes of the weight of one drum. */
  const made: readonly (readonly [string, (item: SheetItem) => number])[] = [
    ['left out', () => 0],
    ['counted twice', (item) => 2 * lbOf(item)],
    ['kg for lb', ({ kg }) => Math.round(kg)],
    ['lb for kg', (item) => Math.round(lbOf(item) / 0.45359237)],
    ['gross for net', (item) => lbOf(item) - Math.round(item.tareKg! / 0.45359237)],
    ['digits swapped', (item) => Number(String(lbOf(item)).replace(/(.)(.)$/, '$2$1'))],
    ['one digit', (item) => lbOf(item) + 40],
  ];

  it.each(made)('%s, on any drum of any load, is among the slips named', (kind, spoil) => {
    fc.assert(
      fc.property(loads, fc.nat(), (list, pick) => {
        const item = list[pick % list.length]!;
        const sheet = list.reduce((sum, one) => sum + lbOf(one), 0);
        const typed = sheet - lbOf(item) + spoil(item);
        const compared = compareTotals(
          question(typed, { bySheetLb: pounds(sheet), items: list, plannedLb: null }),
        );
        expect(compared.differenceLb).toBe(Math.abs(sheet - typed));
        if (compared.differenceLb > list.length / 2)
          expect(compared.slips.map((slip) => slip.kind)).toContain(kind);
      }),
      { numRuns: 300 },
    );
  });

  /** Two at once: what they make of the weights of two drums. */
  const two: readonly (readonly [string, (one: SheetItem, other: SheetItem) => number])[] = [
    ['both left out', () => 0],
    ['both twice', (one, other) => 2 * (lbOf(one) + lbOf(other))],
    ['both in kg', (one, other) => Math.round(one.kg) + Math.round(other.kg)],
    ['one left out, one in kg', (_, other) => Math.round(other.kg)],
  ];
  it.each(two)('%s, of any two drums: named, or a single slip explains it too', (_, spoil) => {
    fc.assert(
      fc.property(loads, (list) => {
        const [one, other] = [list[0]!, list[1]!];
        const sheet = list.reduce((sum, each) => sum + lbOf(each), 0);
        const typed = sheet - lbOf(one) - lbOf(other) + spoil(one, other);
        const { slips } = compareTotals(
          question(typed, { bySheetLb: pounds(sheet), items: list, plannedLb: null }),
        );
        const found = slips.filter(({ kind }) => kind !== 'one digit');
        expect(found).not.toEqual([]);
        if (found.some(({ kind }) => kind === 'two weights')) expect(found).toHaveLength(1);
      }),
      { numRuns: 300 },
    );
  });

  it('two totals are compared alike whichever is on the sheet, but for left out and twice, kg and lb', () => {
    fc.assert(
      fc.property(loads, fc.integer({ min: -400, max: 400 }), (list, off) => {
        const sheet = list.reduce((sum, one) => sum + lbOf(one), 0);
        const ask = (bySheet: number, typed: number) =>
          compareTotals(question(typed, { bySheetLb: pounds(bySheet), items: list, plannedLb: null }));
        expect(ask(sheet, sheet + off).differenceLb).toBe(ask(sheet + off, sheet).differenceLb);
        expect(ask(sheet, sheet + off).agrees).toBe(off === 0);
      }),
    );
  });
});
