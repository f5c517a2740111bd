import type { LoadSheet, SheetLeg } from '@drumline/loading';
import type { PaperSize } from '../pdf/paper-size.js';
import type { Block } from '../pdf/parts.js';
import type { PrintStamp } from '../pdf/print-stamp.js';
import { largeFigures } from './large-figures.js';
import { roomToWriteIn } from './listed.js';
import { drumTable } from './sheet-drums.js';
import { sheetFoot } from './sheet-foot.js';
import { foldLine, sheetHead } from './sheet-head.js';
import { acrossThePage, dangerousGoods, decided, waysOut } from './sheet-lines.js';
import { homeTables, weightsTable } from './sheet-weights.js';

/** What a print adds to a load sheet. */
export interface SheetPrint {
  readonly stamp: PrintStamp;
  readonly paper: PaperSize;
  /** Names of places by code. */
  readonly names: ReadonlyMap<string, string>;
}

/** One of the pages of a sheet: a leg that carries something. */
export interface SheetPage {
  readonly sheet: LoadSheet;
  readonly print: SheetPrint;
  readonly leg: number;
  /** From 1. */
  readonly page: number;
  readonly pages: number;
}

/**
 * The load sheet as it is printed: one page; a second stop gets a page of its own, with the same head, version and code,
 * and so do the sentences of a leg that has more aboard, or more to say, than a page has room for. From the top in the order of the work;
 * every total of the sheet stands below the fold line.
 */
export const loadSheetPages = (sheet: LoadSheet, print: SheetPrint): readonly Block[] => {
  const makers = loadedLegs(sheet).flatMap((leg) =>
    (roomToWriteIn(sheet, leg, print.paper) === null ? [weightsPage, sentencesPage] : [wholePage]).map(
      (make) => ({ leg, make }),
    ),
  );
  return makers.map(({ leg, make }, index) =>
    largeFigures(make({ sheet, print, leg, page: index + 1, pages: makers.length })),
  );
};

const wholePage = (page: SheetPage): Block => ({
  stack: [
    ...untilTheFold(page),
    besideTheWeights(page),
    acrossThePage(page.sheet, legOf(page)),
    sheetFoot(page),
  ],
});

/** Where the next leg is loaded too, no way home stands at the right, and the ways out have its room. */
const besideTheWeights = (page: SheetPage): Block => {
  const leg = legOf(page);
  const right = [...homeAndFuel(page), dangerousGoods(page.sheet, leg)];
  return homeTables(page.sheet, page.leg).length > 0
    ? sideBySide([weightsTable(leg), decided(leg)], right)
    : sideBySide([weightsTable(leg), decided(leg, 'without')], [...right, waysOut(leg)]);
};

const weightsPage = (page: SheetPage): Block => ({
  stack: [
    ...untilTheFold(page),
    sideBySide([weightsTable(legOf(page))], homeAndFuel(page)),
    {
      text: `Two pages for this leg: go-back lines, dangerous goods and tie-down are on page ${page.page + 1}.`,
      bold: true,
      margin: [0, 2, 0, 4],
    },
    sheetFoot(page),
  ],
});

const sentencesPage = (page: SheetPage): Block => ({
  stack: [
    sheetHead(page),
    { text: `Goes with page ${page.page - 1}: load by both.`, bold: true, margin: [0, 2, 0, 2] },
    sideBySide([decided(legOf(page))], [dangerousGoods(page.sheet, legOf(page))]),
    acrossThePage(page.sheet, legOf(page)),
  ],
});

const legOf = ({ sheet, leg }: SheetPage): SheetLeg => sheet.legs[leg]!;

const untilTheFold = (page: SheetPage): Block[] => [
  sheetHead(page),
  drumTable(page),
  foldLine('fold back here until the hand totals are written'),
];

const homeAndFuel = ({ sheet, leg }: SheetPage): Block[] => [
  ...homeTables(sheet, leg),
  { text: sheet.fuelWords, margin: [0, 3, 0, 4] },
];

/** At the left what is added up and decided; at the right the way home, its fuel, and the dangerous goods. */
const sideBySide = (left: Block[], right: Block[]): Block => ({
  columns: [
    { stack: left, width: 336 },
    { stack: right, width: '*' },
  ],
  columnGap: 6,
  margin: [0, 0, 0, 2],
});

/** Legs with something aboard; the first where nothing is carried at all. */
const loadedLegs = (sheet: LoadSheet): readonly number[] => {
  const loaded = sheet.legs.flatMap(({ totals }, leg) => (totals.items.length > 0 ? [leg] : []));
  return loaded.length > 0 ? loaded : [0];
};
