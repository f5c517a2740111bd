import { writeFileSync } from 'node:fs';
import { readSquareCode } from '@drumline/loading';
import { drawSquare } from '@drumline/loading/code-square';
import { kilograms } from '@drumline/units';
import jsQR from 'jsqr';
import { describe, expect, it } from 'vitest';
import type { AnyPart } from '../pdf/any-part.js';
import { makePdf } from '../pdf/make-pdf.js';
import { type PaperSize, paperSizes } from '../pdf/paper-size.js';
import { slipsPage } from '../slips/slips.js';
import { demo, fullFlight, loadOf, printOf, sheetOf, sheetWith } from '../testing/example-sheet.js';
import { oddSheet } from '../testing/odd-flight.js';
import { printedTexts } from '../testing/printed-texts.js';
import { drawn, pageCount } from '../testing/read-pdf.js';
import { blankSheetPage } from './blank-sheet.js';
import { loadSheetPages } from './load-sheet-pages.js';
import { dangerousGoods } from './sheet-lines.js';

const scenario = demo();
const sheet = sheetOf(scenario, fullFlight);
const pdfOf = (paper: PaperSize, of = sheet) =>
  makePdf({ title: 'Load sheet', paper, pages: loadSheetPages(of, printOf(scenario, paper)) });
const wordsOf = (of = sheet) =>
  loadSheetPages(of, printOf(scenario, 'a4')).flatMap((page) => printedTexts(page));

/** To a one-way strip that an aeroplane of type A may not leave as it arrives. */
const saddle = sheetOf(scenario, {
  ...fullFlight,
  id: 'F06',
  aircraft: 'A1',
  from: 'XMER',
  to: 'XMER',
  stops: [{ place: 'XGAN', drums: 4 }],
});

/** So many of its drums are in no book, and nobody has told their weight. */
const sheetWithStrange = (place: string, drums: number, strange: number) => {
  const flight = { ...fullFlight, stops: [{ place, drums }] };
  const load = loadOf(scenario, flight);
  const known = load.drums.slice(strange);
  const inNoBook = load.drums.slice(0, strange).map((drum, at) => ({
    ...{ ...drum, number: `${9991 + at}` },
    ...{ batch: 'NOT IN BOOK', notInBook: 'planning weight' as const },
  }));
  return sheetWith(scenario, flight, { ...load, drums: [...inNoBook, ...known] });
};

type Printed = ReturnType<typeof printedTexts>;

/** What stands there, as it is read. */
const said = (texts: Printed): string =>
  texts
    .map(({ text }) => text)
    .join(' ')
    .replace(/\s+/g, ' ');

const expectSizes = (texts: Printed): void => {
  expect(texts.filter(({ size }) => size < 10)).toEqual([]);
  const figures = texts.filter(({ text }) => /\d/.test(text));
  expect(figures.length).toBeGreaterThan(80);
  expect(figures.filter(({ size }) => size < 12)).toEqual([]);
};

// A PDF is made in about a second, and a loaded machine takes several.
describe('the load sheet of a full flight', { timeout: 60_000 }, () => {
  it.each(paperSizes)('fits one page of %s, every position of the cabin taken', async (paper) => {
    expect(sheet.drums).toHaveLength(6);
    expect(pageCount(await pdfOf(paper))).toBe(1);
  });

  it.each(paperSizes)('fits one page of %s to a one-way strip, with a committal point', async (paper) => {
    const stops = [{ place: 'XJUN', drums: 6 }];
    const oneWay = sheetOf(scenario, { ...fullFlight, stops });
    expect(oneWay.legs[0]!.goBack.lines).toHaveLength(8);
    expect(pageCount(await pdfOf(paper, oneWay))).toBe(1);
  });

  it.each([
    ['a4', 'XLOR', 6, 1, 1],
    ['a4', 'XJUN', 6, 2, 1],
    ['a4', 'XLOR', 6, 6, 2],
    ['letter', 'XLOR', 5, 1, 1],
    ['letter', 'XLOR', 6, 1, 2],
    ['letter', 'XJUN', 6, 6, 2],
  ] as const)('on %s to %s of %i drums, %i of them in no book: pages %i, as laid out', async (...of) => {
    const [paper, place, drums, strange, pages] = of;
    const noBook = sheetWithStrange(place, drums, strange);
    const pdf = await pdfOf(paper, noBook);
    if (process.env.SHOTS) writeFileSync(`${process.env.SHOTS}/no-book-${of.join('-')}.pdf`, pdf);
    expect(pageCount(pdf)).toBe(pages);
    const words = said(
      loadSheetPages(noBook, printOf(scenario, paper)).flatMap((page) => printedTexts(page)),
    );
    expect(words).toMatch(/Not in the book: .*9991 is not in the book: no weight was told,/);
    expect(words).toContain(`page ${pages} of ${pages}`);
  });

  it.each(paperSizes)(
    'is two pages of %s with eight drums, three passengers, freight and the longest names, and says so',
    async (paper) => {
      const odd = oddSheet(scenario);
      expect([odd.drums.length, odd.cargo.length, odd.holds]).toEqual([8, 4, true]);
      const pdf = await pdfOf(paper, odd);
      if (process.env.SHOTS) writeFileSync(`${process.env.SHOTS}/odd-${paper}.pdf`, pdf);
      expect(pageCount(pdf)).toBe(2);
      const texts = wordsOf(odd);
      expectSizes(texts);
      const words = said(texts);
      expect(words).toContain('go-back lines, dangerous goods and tie-down are on page 2');
      expect(words).toContain('3 passengers');
      expect(words).toContain('CA 2027/1717');
    },
  );

  it('is printed in black only', async () => {
    const operators = drawn(await pdfOf('a4'));
    expect(operators.length).toBeGreaterThan(10_000);
    // Every colour that is set, for lines and for what is filled; 0 0 0 is black.
    const colours = new Set(operators.match(/^[\d. ]+ (?:scn?|SCN?|rg|RG|g|G|k|K)$/gm));
    expect([...colours].map((each) => each.replace(/ \w+$/, ''))).toEqual([...colours].map(() => '0 0 0'));
  });

  it.each([
    ['F05', sheet, 'leave XLOR full, dry 8,131 8,300 169'],
    ['F06', saddle, 'leave XGAN full, dry 6,265 6,250 −15'],
  ] as const)('%s has no word under 10 pt and no figure at all under 12 pt', (_, of, leaveFull) => {
    const texts = wordsOf(of);
    expectSizes(texts);
    expect(said(texts)).toContain(leaveFull);
  });

  it.each(paperSizes)(
    'fits one page of %s to the steepest strip, its tailwind and point included',
    async (paper) => {
      expect(pageCount(await pdfOf(paper, saddle))).toBe(1);
    },
  );

  it('tells none of its totals above the fold line', () => {
    const texts = wordsOf().map(({ text }) => text);
    const fold = texts.findIndex((text) => text.startsWith('fold back here'));
    const { loadLb, takeoffLb } = sheet.legs[0]!.totals;
    expect([loadLb, takeoffLb]).toEqual([2378, 8528]);
    const [above, below] = [texts.slice(0, fold).join(' '), texts.slice(fold).join(' ')];
    for (const total of ['2,378', '8,528', '1,078.2']) {
      expect(above).not.toContain(total);
      expect(below).toContain(total);
    }
  });

  it('says which version to throw away, its check code, and that the commander decides', () => {
    const words = said(wordsOf());
    expect(words).toContain('Version 3 replaces version 2: throw version 2 away.');
    expect(words).toContain(sheet.checkCode);
    expect(words).toContain('The commander’s approved data decide.');
  });

  it('has every fact of the sheet on it: drums, go-back lines, particulars, centre of gravity', () => {
    const words = wordsOf()
      .map(({ text }) => text)
      .join(' ')
      .replace(/ {2,}/g, ' ');
    const [leg] = sheet.legs;
    for (const { number, position, batch } of sheet.drums)
      for (const fact of [number, position, batch]) expect(words).toContain(fact);
    for (const line of leg!.goBack.lines)
      expect(words.replaceAll(' ', '')).toContain(line.replaceAll(' ', ''));
    expect(words.replaceAll(' ', '')).toContain(sheet.tieDown!.brief.replaceAll(' ', ''));
    for (const { label, value } of leg!.particulars)
      expect(words.replaceAll(' ', '')).toContain(
        `${label}${value === '2027-06-15' ? '15 June 2027' : value}`.replaceAll(' ', ''),
      );
    for (const { cg } of leg!.rows) if (cg !== null) expect(words).toContain(cg.armIn.toFixed(1));
  });
});

it('the particulars are a list: each field begins a line of its own, or the second half of one', () => {
  const [leg] = sheet.legs;
  const [[cell]] = (dangerousGoods(sheet, leg!) as { table: { body: [[{ stack: AnyPart[] }]] } }).table.body;
  const rows = cell.stack.slice(1).map(({ columns = [] }) => columns as { text: { text: string }[] }[]);
  expect(Math.max(...rows.map(({ length }) => length))).toBe(2);
  expect(rows.flat().map(({ text: [label] }) => label!.text.trim())).toEqual(
    leg!.particulars.map(({ label }) => label),
  );
});

it.each(paperSizes)(
  'a booked flight with ten passengers each way and freight is one page of %s a leg',
  { timeout: 60_000 },
  async (paper) => {
    const [like, ...others] = scenario.bookedFlights;
    const full = { passengers: 10, passengersKg: kilograms(900), freightKg: kilograms(120) };
    const booked = {
      ...like!,
      aircraft: 'C1',
      configuration: 'seats',
      legs: [
        { from: 'XALD', to: 'XCIN', ...full },
        { from: 'XCIN', to: 'XALD', ...full },
      ],
    };
    const { id, aircraft } = booked;
    const flight = { ...fullFlight, id, aircraft, date: '2027-06-15', stops: [] };
    const sheetOfIt = sheetOf({ ...scenario, bookedFlights: [booked, ...others] }, flight);
    const pdf = await pdfOf(paper, sheetOfIt);
    if (process.env.SHOTS) writeFileSync(`${process.env.SHOTS}/booked-${paper}.pdf`, pdf);
    expect(pageCount(pdf)).toBe(2);
    expect(said(wordsOf(sheetOfIt))).toContain('10 passengers');
  },
);

it('a second stop gets a page of its own, with the same version and check code', () => {
  const stops = [
    { place: 'XBIR', drums: 2 },
    { place: 'XDUN', drums: 2 },
  ];
  const pages = loadSheetPages(sheetOf(scenario, { ...fullFlight, stops }), printOf(scenario, 'a4'));
  expect(pages).toHaveLength(2);
  for (const page of pages) {
    const words = said(printedTexts(page));
    expect(words).toContain('Version 3 replaces version 2');
    expect(words).toMatch(/page [12] of 2/);
  }
});

it.each(paperSizes.flatMap((paper) => ['approved', 'held'].map((as) => [paper, as] as const)))(
  'a flight of two stops, of which one surface is unknown, is a page of %s for each, %s',
  { timeout: 60_000 },
  async (paper, as) => {
    const held = { reason: 'water found', by: 'fuel quality', at: scenario.asOf };
    const of =
      as === 'held'
        ? { ...scenario, batches: scenario.batches.map((batch) => ({ ...batch, held })) }
        : scenario;
    const twoStops = sheetOf(of, {
      ...fullFlight,
      ...{ id: 'F001', aircraft: 'A1', from: 'XMER', to: 'XMER' },
      stops: [
        { place: 'XLOR', drums: 3 },
        { place: 'XGAN', drums: 2 },
      ],
    });
    expect(twoStops.assumptions).toContain('unknown counts as soft');
    const pages = loadSheetPages(twoStops, printOf(scenario, paper));
    const pdf = await pdfOf(paper, twoStops);
    if (process.env.SHOTS) writeFileSync(`${process.env.SHOTS}/two-stops-${paper}-${as}.pdf`, pdf);
    expect([pages.length, pageCount(pdf)]).toEqual([2, 2]);
  },
);

it('no part of a page is used in another: the maker of the PDF would print it once', () => {
  const partsOf = (part: unknown): object[] =>
    typeof part !== 'object' || part === null ? [] : [part, ...Object.values(part).flatMap(partsOf)];
  const make = () => [
    ...loadSheetPages(sheet, printOf(scenario, 'a4')),
    slipsPage({ kind: 'draw', numbers: ['D-1', 'D-2', 'D-3', 'D-4'], paper: 'a4', programmes: ['P1'] }),
    slipsPage({ kind: 'count', numbers: ['C-1', 'C-2', 'C-3', 'C-4'], paper: 'a4', programmes: [] }),
    blankSheetPage('a4', null),
  ];
  const first = make().flatMap(partsOf);
  const both = [...first, ...make().flatMap(partsOf)];
  expect(first.length).toBeGreaterThan(500);
  expect(new Set(both).size).toBe(both.length);
});

it('a load that does not hold is printed with what is wrong at its head', () => {
  const load = loadOf(scenario, fullFlight);
  const heavy = {
    ...load,
    drums: load.drums.map((drum) => ({ ...drum, grossKg: 260 as typeof drum.grossKg })),
  };
  const [first] = wordsOf(sheetWith(scenario, fullFlight, heavy)).filter(({ text }) =>
    text.startsWith('This load does not hold'),
  );
  expect(first).toBeDefined();
});

describe('the code square', () => {
  /** Read by another program than the one that made it, as so many dots on a side. */
  const readSquare = (text: string, dots: number): string | undefined => {
    const { side, path } = drawSquare(text);
    const quiet = 4;
    const dark = new Set<string>();
    for (const [, x, y, length] of path.matchAll(/M(\d+) (\d+)h(\d+)/g))
      for (let at = 0; at < Number(length); at++) dark.add(`${Number(x) + at} ${y}`);
    const module = (dot: number) => Math.floor(((dot + 0.5) * (side + 2 * quiet)) / dots) - quiet;
    const pixels = new Uint8ClampedArray(dots * dots * 4).fill(255);
    for (let y = 0; y < dots; y++)
      for (let x = 0; x < dots; x++)
        if (dark.has(`${module(x)} ${module(y)}`)) pixels.fill(0, (y * dots + x) * 4, (y * dots + x) * 4 + 3);
    return jsQR.default(pixels, dots, dots)?.data;
  };

  it.each([
    ['printed 40 mm wide, photographed from a hand’s breadth, 22 dots to a mm', 942],
    ['on a phone 360 wide with two dots to a pixel', 672],
  ])('%s gives the whole leg back to another program', (_, dots) => {
    const read = readSquare(sheet.square, dots);
    expect(read).toBe(sheet.square);
    expect(readSquareCode(read!)).toEqual({ ok: true, checkCode: sheet.checkCode });
    for (const { number, position } of sheet.drums) expect(read).toContain(`${position} ${number} `);
  });
});
