import { type PaperSize, papers } from './paper-size.js';
import { type Block, blank, type Cell, grid, ruled, strong, tick } from './parts.js';
import { signatures } from './sheet-foot.js';
import { foldLine, topOfPage } from './sheet-head.js';

/** A load sheet to be filled in by hand: the same boxes at the same places. */
export const blankSheetPage = (paper: PaperSize): Block => ({
  stack: [
    topOfPage({
      title: 'By hand',
      first: `Load sheet, flight ${blank(7)} from ${blank(7)} to ${blank(7)}`,
      second: `Aircraft ${blank(8)} date ${blank(12)} off ${blank(8)} pilot ${blank(12)}`,
      code: null,
    }),
    drumRows(),
    foldLine('fold back here until the hand totals are written'),
    weightRows(),
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
      heights: (row) => (row === 0 ? 12 : 21),
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
    widths: [140, '*', '*', '*', '*'],
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
  margin: [0, 8, 0, 8],
});
