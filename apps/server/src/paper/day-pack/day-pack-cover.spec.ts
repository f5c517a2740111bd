import { writeFileSync } from 'node:fs';
import { litres } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { makePdf } from '../pdf/make-pdf.js';
import { type PaperSize, paperSizes } from '../pdf/paper-size.js';
import { demo } from '../testing/example-sheet.js';
import { printedTexts } from '../testing/printed-texts.js';
import { pageCount } from '../testing/read-pdf.js';
import type { DayPack, PackFlight, PackPlace } from './day-pack.js';
import { coverPages } from './day-pack-cover.js';

const strips = demo().places.filter(({ kind }) => kind === 'strip');

/** Every flight has two stops, and every third of them lands at the same strips. */
const longWhy =
  'no drum of the base is in date on that day, and nobody has said which are to be taken in their place';

/** Two lines, as of what binds most flights. */
const usualWhy = 'its drums are still to be filled by the evening before';

const flight = (at: number, why: string): PackFlight => ({
  id: `F${String(at + 1).padStart(2, '0')}`,
  aircraft: 'B1',
  route: ['XALD', strips[at % 3]!.code, strips[3]!.code, 'XALD'],
  departs: '07:10',
  pilot: 'FW3',
  state: 'approved',
  needsDecision: null,
  stops: [{ place: strips[at % 3]!.code, drums: 6, numbers: [] }],
  sheet: { why },
});

const place = ({ code, name }: (typeof strips)[number]): PackPlace => ({
  code,
  name,
  radioTime: '06:15',
  hands: 'none: crew roll drums',
  drumsADay: 10,
  tailwindLimitKt: 5,
  isOneWay: true,
  surface: 'dry 13 June 18:10',
  usableLitres: litres(12_400),
  minimumLitres: litres(1_200),
  level: 'below minimum',
  needsCount: true,
});

const packOf = (flights: number, paper: PaperSize, held = 0, why = longWhy): DayPack => ({
  date: '2027-06-15',
  stamp: { at: 'Mon 14 June 2027 17:02', by: 'Demo dispatcher' },
  paper,
  flights: Array.from({ length: flights }, (_, at) => flight(at, why)),
  places: strips.map(place),
  held: Array.from({ length: held }, (_, at) => ({
    what: `Batch J27-04${at} is held: water found at the morning walk`,
    where: 'XALD, XMER, XESK, XLOR (44 drums)',
  })),
  names: new Map(),
  silentPeople: ['Demo pilot'],
  programmes: [],
  goods: null,
  slips: { count: ['C-1001', 'C-1004'], draw: ['D-1001', 'D-1004'] },
});

describe.each(paperSizes)('the cover of a day pack on %s', { timeout: 60_000 }, (paper) => {
  it.each([0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 15])(
    'with %i flights never spills over: a page is as it was laid out',
    async (count) => {
      for (const [held, why] of [
        [0, longWhy],
        [4, longWhy],
        [1, usualWhy],
      ] as const) {
        const pages = coverPages(packOf(count, paper, held, why));
        const pdf = await makePdf({ title: 'Cover', paper, pages, foot: 'Day pack' });
        if (process.env.SHOTS) writeFileSync(`${process.env.SHOTS}/cover-${paper}-${count}-${held}.pdf`, pdf);
        expect([count, held, pageCount(pdf)]).toEqual([count, held, pages.length]);
      }
    },
  );

  it('of a usual day is one page; of a very full one the strips have a page of their own, with a head', () => {
    expect(coverPages(packOf(4, paper, 0, usualWhy))).toHaveLength(1);
    const full = coverPages(packOf(15, paper));
    expect(full).toHaveLength(2);
    expect(printedTexts(full[1]!).map(({ text }) => text)).toContain('Tuesday 15 June 2027');
  });
});

it('today’s surface is written in: its cells are empty, and what was heard last stands beside the place', () => {
  const words = printedTexts([...coverPages(packOf(1, 'a4'))]).map(({ text }) => text);
  expect(words).toContain('Write in: surface, time, by');
  expect(words.filter((word) => word === 'dry 13 June 18:10')).toHaveLength(strips.length);
});

it('a day without flights says so, in the place of a table with no line', () => {
  const words = coverPages(packOf(0, 'a4'))
    .flatMap((page) => printedTexts(page))
    .map(({ text }) => text)
    .join(' ');
  expect(words).toContain('No flight carries drums on this day.');
  expect(words).not.toContain('Aircraft');
});
