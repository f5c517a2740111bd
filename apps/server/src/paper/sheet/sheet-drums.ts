import type { SheetCargo, SheetDrum } from '@drumline/loading';
import { printNumber } from '@drumline/units';
import { type Block, blank, type Cell, figure, head, ruled, tick } from '../pdf/parts.js';
import { listedOn } from './listed.js';
import type { SheetPage } from './load-sheet-pages.js';

/** So many boxes to tick, each in the middle of its cell. */
const ticks = (count: number): Cell[] =>
  Array.from({ length: count }, () => ({
    columns: [{ text: '' }, { ...tick(), width: 12 }, { text: '' }],
    margin: [0, 1, 0, 0],
  }));

/**
 * Everything aboard the leg, front to back, each with its kilograms and its whole pounds; ticks for tying it and for where
 * it went. Under the two columns stand the boxes of the hand's own totals: the sheet's are below the fold.
 */
export const drumTable = ({ sheet, leg }: SheetPage): Block => {
  const { drums, cargo } = listedOn(sheet, leg);
  const rows = [
    ...drums.map((drum) => drumRow(drum)),
    ...cargo.map((one) => cargoRow(one, sheet.legs[one.lastLeg]!.to)),
  ];
  return {
    table: {
      headerRows: 1,
      widths: [36, 36, 66, 70, 40, 40, 30, 40, 32, 60, 44],
      body: [
        [
          'Place',
          'Arm, in',
          'Drum',
          'Batch',
          'kg',
          'lb',
          'Tied',
          'Leave at',
          'Left',
          'Brought back',
          'Problem',
        ].map((title, at) =>
          head(title, [1, 4, 5].includes(at) ? 'right' : [6, 8, 9, 10].includes(at) ? 'center' : 'left'),
        ),
        ...rows,
        handTotals(),
      ],
    },
    layout: ruled({
      across: (at, count) => (at === 1 || at === count - 1 ? 1.2 : at === 0 || at === count ? 0 : 0.6),
      upright: (at) => (at === 7 ? 1.4 : 0),
      pad: [2, 0.6],
    }),
  };
};

const drumRow = ({ position, armIn, number, batch, grossKg, lb, leaveAt, onHold }: SheetDrum): Cell[] => [
  { text: position, fontSize: 12, bold: true },
  figure(printNumber(armIn)),
  { text: number, fontSize: 13, bold: true, margin: [5, -1, 0, 0], ...(onHold ? struckThrough : {}) },
  { text: batch, fontSize: 12, ...(onHold ? struckThrough : {}) },
  figure(printNumber(grossKg, 1)),
  figure(printNumber(lb)),
  ...(onHold ? holdCells() : [...ticks(1), { text: leaveAt, fontSize: 12 }, ...ticks(3)]),
];

const struckThrough = { decoration: 'lineThrough' } as const;

/** In the place of every box to tick: nobody ties or leaves such a drum. */
const holdCells = (): Cell[] => [
  { text: 'HOLD: do not load, do not use', bold: true, fontSize: 12, colSpan: 5 },
  ...Array.from({ length: 4 }, () => ''),
];

/** Seats of many passengers need more than the column of places. */
const cargoRow = ({ name, place, kg, lb }: SheetCargo, leaveAt: string): Cell[] => [
  { text: [{ text: place ?? 'no place', bold: true }, ` ${name}`], colSpan: 4, fontSize: 12 },
  '',
  '',
  '',
  figure(printNumber(kg, 1)),
  figure(printNumber(lb)),
  ...ticks(1),
  { text: leaveAt, fontSize: 12 },
  ...ticks(3),
];

const writeIn = (unit: string, width: number): Block => ({
  table: { widths: [width], body: [[{ text: unit, alignment: 'right', bold: true, margin: [0, 3, 0, 0] }]] },
  layout: ruled({ across: () => 1.2, upright: () => 1.2, pad: [2, 1] }),
  margin: [0, 2, 0, 0],
});

/** Made anew each time: the maker of the PDF writes into what it is given. */
const handTotals = (): Cell[] => [
  { text: 'Add both columns by hand', bold: true, alignment: 'right', colSpan: 3, margin: [0, 5, 0, 0] },
  '',
  '',
  { ...writeIn('kg', 108), colSpan: 2 },
  '',
  { ...writeIn('lb', 64), colSpan: 2 },
  '',
  { text: `at ${blank(10)} by ${blank(14)}`, colSpan: 4, margin: [2, 7, 0, 0] },
  '',
  '',
  '',
];
