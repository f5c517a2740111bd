import type { LoadSheet, SheetLeg } from '@drumline/loading';
import { print, printNumber } from '@drumline/units';
import { codeSquare } from '../pdf/code-square.js';
import { type Block, blank, grid, strong } from '../pdf/parts.js';
import { roomToWriteIn } from './listed.js';
import type { SheetPage } from './load-sheet-pages.js';

/** In points: 40 mm, so that a module of a full flight is more than a third of a millimetre. */
const squareSide = 113;

/** Two pairs of totals: the load by the sheet and by hand, the take-off weight by the sheet and by the aircraft. */
export const totalsTable = ({ sheet, leg }: SheetPage): Block => {
  const { totals } = sheet.legs[leg]!;
  return {
    stack: [
      {
        table: {
          widths: [84, '*', '*', '*', '*'],
          body: [
            ['lb', 'By the sheet', 'By hand', 'By the aircraft', 'Difference, lb'].map((title) =>
              strong(title),
            ),
            [strong('Load', { margin: [0, 2, 0, 2] }), bySheet(totals.loadLb), '', hatched(), ''],
            [
              strong('Take-off weight', { margin: [0, 2, 0, 2] }),
              bySheet(totals.takeoffLb),
              hatched(),
              '',
              '',
            ],
          ],
        },
        layout: grid(1.8, 0.8, [4, 1]),
      },
      {
        text: `More than ${print(sheet.toleranceLb, 'lb')} apart: do not sign, find it.`,
        bold: true,
        margin: [0, 1, 0, 2],
      },
    ],
  };
};

const bySheet = (lb: number): Block => ({ text: printNumber(lb), fontSize: 15, bold: true });

/** A cell that nobody writes in. Made anew each time: the maker of the PDF writes into what it is given. */
const hatched = (): Block => ({
  canvas: Array.from({ length: 7 }, (_, at) => ({
    type: 'line' as const,
    x1: at * 9,
    y1: 16,
    x2: at * 9 + 16,
    y2: 0,
    lineWidth: 0.6,
  })),
});

const roundingWords = ({ loadKg, roundingWords: words }: SheetLeg['totals']): string =>
  `${words ?? `${print(loadKg, 'kg', 1)} in all`}.`;

/** What a loading is signed with; cautions and times below. */
export const sheetFoot = (page: SheetPage): Block => {
  const { sheet, leg } = page;
  const { to, totals } = sheet.legs[leg]!;
  return {
    stack: [
      mayBeLoadedBy(sheet) ? squareAndTotals(page) : nothingToSign(),
      {
        text: [
          { text: `${sheet.cautions.join(' ')} `, bold: true },
          `If ${sheet.checkCode} is not on phone and board too, one of them is old. ${roundingWords(totals)} ${sheet.assumptions}`,
        ],
        margin: [0, 2, 0, 0],
      },
      {
        text: `Landed ${to} ${blank(9)} surface ${blank(11)} off ${blank(9)} home ${blank(9)}`,
        margin: [0, 3, 0, 0],
      },
    ],
  };
};

/** Who signs a sheet has loaded by it: one that says not to has no boxes for it, and no square to load a phone with. */
const mayBeLoadedBy = ({ holds, flight, heldWords }: LoadSheet): boolean =>
  holds && heldWords === null && flight.notApproved !== true;

const nothingToSign = (): Block => ({
  text: 'Nothing to sign: nobody loads by this sheet. Ask base for one that may be loaded by.',
  bold: true,
  margin: [0, 4, 0, 4],
});

/** Code square beside totals and signatures. */
const squareAndTotals = (page: SheetPage): Block => {
  const { sheet, print: by, leg } = page;
  const room = roomToWriteIn(sheet, leg, by.paper) ?? 0;
  return {
    columns: [
      { ...codeSquare(sheet.square, squareSide), width: squareSide },
      {
        stack: [totalsTable(page), signatures(['Loaded and tied by', 'Checked by', 'Commander'], room)],
        width: '*',
      },
    ],
    columnGap: 10,
  };
};

export const signatures = (who: readonly string[], moreHeight: number): Block => ({
  table: {
    widths: who.map(() => '*'),
    heights: 28 + moreHeight,
    body: [who.map((one) => ({ stack: [strong(one), { text: 'time', margin: [0, 5 + moreHeight, 0, 0] }] }))],
  },
  layout: grid(1, 1, [4, 2]),
});
