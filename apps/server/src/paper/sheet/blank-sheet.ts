import { type ParticularsSet, particularsByHand, usualParticulars } from '@drumline/loading';
import { type PaperSize, papers } from '../pdf/paper-size.js';
import { type Block, blank, type Cell, grid, ruled, strong, tick } from '../pdf/parts.js';
import { signatures } from './sheet-foot.js';
import { foldLine, topOfPage } from './sheet-head.js';
import { dangerousGoods } from './sheet-lines.js';

/** A load sheet to be filled in by hand: the same boxes at the same places. */
export const blankSheetPage = (paper: PaperSize, goods: ParticularsSet | null): Block => ({
  stack: [
    topOfPage({
      title: 'By hand',
      first: `Load sheet, flight ${blank(7)} from ${blank(7)} to ${blank(7)}`,
      second: `Aircraft ${blank(8)} date ${blank(12)} off ${blank(8)} pilot ${blank(12)}`,
      code: blank(4),
    }),
    {
      text: `Version ${blank(5)} replaces ${blank(5)}: throw that one away. No printed sheet: leave version and check code empty, and say so to base.`,
      margin: [0, 0, 0, 3],
    },
    drumRows(),
    foldLine('fold back here until the hand totals are written'),
    {
      columns: [
        { stack: [weightRows()], width: 300 },
        { stack: [goodsByHand(goods), decidedRows()], width: '*' },
      ],
      columnGap: 8,
    },
    tieDown(),
    totals(),
    signatures(['Loaded and tied by', 'Checked by', 'Commander'], papers[paper].moreToWriteIn / 2),
    {
      text: 'For use on the ground only. The commander’s approved data decide; drums are tied by the approved loading manual.',
      bold: true,
      margin: [0, 4, 0, 0],
    },
    {
      text: `Landed ${blank(9)} surface ${blank(11)} off ${blank(9)} home ${blank(9)}`,
      margin: [0, 6, 0, 0],
    },
  ],
});

const drumRows = (): Block => {
  const empty = Array.from({ length: 8 }, () => Array.from({ length: 5 }, () => ''));
  return {
    table: {
      widths: [60, 80, '*', 70, 70, 34, 34, 46, 46],
      heights: (row) => (row === 0 ? 12 : 19),
      body: [
        ['Place', 'Drum', 'Batch, leave at', 'kg', 'lb', 'Tied', 'Left', 'Brought back', 'Problem'].map(
          (title) => strong(title),
        ),
        ...empty.map((row): Cell[] => [...row, tick(), tick(), tick(), tick()]),
        [strong('Add both columns', { colSpan: 3, alignment: 'right' }), '', '', '', '', '', '', '', ''],
      ],
    },
    layout: grid(1.2, 0.6, [3, 1.5]),
  };
};

const weights = [
  'Operating weight',
  '+ drums and other load',
  '= zero fuel',
  '+ fuel at start-up',
  '− taxi',
  '= take-off',
  '− fuel to the strip',
  '= land',
  'leave the strip again',
];

const weightRows = (): Block => ({
  table: {
    widths: [104, '*', '*', '*', '*'],
    heights: (row) => (row === 0 ? 12 : 18),
    body: [
      ['Weights', 'lb', 'limit, lb', 'spare, lb', 'CG, in'].map((title) => strong(title)),
      ...weights.map((label): Cell[] => [{ text: label, bold: label.startsWith('=') }, '', '', '', '']),
    ],
  },
  layout: ruled({
    across: (at) => (at === 1 ? 1.2 : 0.6),
    upright: (at) => (at === 0 ? 0 : 0.6),
    pad: [3, 1.5],
  }),
});

/** In the operator's own fields, or in a usual set. */
const goodsByHand = (set: ParticularsSet | null): Block =>
  dangerousGoods(
    { particularsMissing: null },
    { particulars: particularsByHand(set ?? usualParticulars) },
    4,
  );

/** Decided the evening before, or with base by radio; by the words of the printed sheet. */
const decidedRows = (): Block => ({
  stack: [
    strong('Go back if', { margin: [0, 4, 0, 0] }),
    ...[
      `tailwind more than ${blank(5)} kt; decide by ${blank(12)}`,
      `Leave by ${blank(8)} Unload or stay ${blank(13)}`,
      `If soft: take ${blank(4)} leave ${blank(19)}`,
      `If it closes: to ${blank(8)} room for ${blank(4)} drums`,
    ].map((text): Block => ({ text, margin: [0, 3, 0, 0] })),
  ],
});

const tieDown = (): Block => ({
  table: {
    widths: ['*'],
    body: [
      [
        {
          text: [
            strong('Each drum tied: '),
            `straps ${blank(4)} forward ${blank(4)} aft ${blank(4)} each side ${blank(4)} up, by manual ${blank(12)}`,
          ],
        },
      ],
    ],
  },
  layout: grid(1, 0.5, [4, 2]),
  margin: [0, 6, 0, 0],
});

const totals = (): Block => ({
  table: {
    widths: [84, '*', '*', '*', '*'],
    heights: (row) => (row === 0 ? 12 : 22),
    body: [
      ['lb', 'By the sheet', 'By hand', 'By the aircraft', 'Difference, lb'].map((title) => strong(title)),
      [strong('Load'), '', '', '', ''],
      [strong('Take-off weight'), '', '', '', ''],
    ],
  },
  layout: grid(1.8, 0.8, [4, 2]),
  margin: [0, 6, 0, 6],
});
