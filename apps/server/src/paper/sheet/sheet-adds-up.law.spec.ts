import { kilograms, pounds } from '@drumline/units';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { demo, fullFlight, loadOf, printOf, sheetWith } from '../testing/example-sheet.js';
import { printedRows, printedTexts, readFigure } from '../testing/printed-texts.js';
import type { SheetPage } from './load-sheet-pages.js';
import { drumTable } from './sheet-drums.js';
import { totalsTable } from './sheet-foot.js';
import { weightsTable } from './sheet-weights.js';

const scenario = demo();
const flights = [
  fullFlight,
  { ...fullFlight, aircraft: 'A1', from: 'XMER', to: 'XMER', stops: [{ place: 'XLOR', drums: 5 }] },
  {
    ...fullFlight,
    stops: [
      { place: 'XBIR', drums: 2 },
      { place: 'XDUN', drums: 3 },
    ],
  },
].map((flight) => ({ flight, load: loadOf(scenario, flight) }));

/** Drums of any weight, as many of them as there are, freight beside them or not. */
const loads = fc
  .record({
    which: fc.nat({ max: flights.length - 1 }),
    tenths: fc.array(fc.integer({ min: 1700, max: 2000 }), { minLength: 6, maxLength: 6 }),
    fewer: fc.nat({ max: 3 }),
    freightLb: fc.option(fc.double({ min: 1, max: 300, noNaN: true })),
  })
  .map(({ which, tenths, fewer, freightLb }) => {
    const { flight, load } = flights[which]!;
    const drums = load.drums
      .slice(fewer)
      .map((drum, at) => ({ ...drum, grossKg: kilograms(tenths[at]! / 10) }));
    const freight = { name: 'stores', place: null, firstLeg: 0, lastLeg: 0 };
    const cargo = freightLb === null ? [] : [{ ...freight, weightLb: pounds(freightLb) }];
    return { flight, load: { ...load, drums, cargo } };
  });

/** Follows the printed sum by finger; what stands on its rows with an equals sign must be what was added so far. */
const followSum = (page: SheetPage): number => {
  let total = 0;
  let takeoff = 0;
  for (const [label, lb] of printedRows(weightsTable(page.sheet.legs[page.leg]!)).slice(1)) {
    const figure = readFigure(lb!);
    expect(Number.isInteger(figure), `${label} ${lb}`).toBe(true);
    if (label === 'Operating weight') total = figure;
    else if (label!.startsWith('+ ')) total += figure;
    else if (label!.startsWith('− ')) total -= figure;
    else if (label!.startsWith('= ')) expect(figure, label).toBe(total);
    if (label!.startsWith('= take-off')) takeoff = figure;
  }
  return takeoff;
};

it('Printed sums: adding the figures as printed gives the printed totals, for 1,000 random loads', () => {
  fc.assert(
    fc.property(loads, ({ flight, load }) => {
      const sheet = sheetWith(scenario, flight, load);
      const print = printOf(scenario, 'a4');
      sheet.legs.forEach((_, leg) => {
        const page: SheetPage = { sheet, print, leg, page: 1, pages: 1 };
        const column = printedRows(drumTable(page)).slice(1, -1);
        const added = column.reduce((sum, row) => sum + readFigure(row[5]!), 0);
        const totals = printedTexts(totalsTable(page)).map(({ text }) => text);
        expect(readFigure(totals[totals.indexOf('Load') + 1]!)).toBe(added);
        expect(readFigure(totals[totals.indexOf('Take-off weight') + 1]!)).toBe(followSum(page));
      });
    }),
    { numRuns: 1000 },
  );
});
