import type { LoadSheet } from '@drumline/loading';
import { isCrowded } from './listed.js';
import type { PaperSize } from './paper-size.js';
import type { Block } from './parts.js';
import type { PrintStamp } from './print-stamp.js';
import { drumTable } from './sheet-drums.js';
import { sheetFoot } from './sheet-foot.js';
import { foldLine, sheetHead } from './sheet-head.js';
import { acrossThePage, dangerousGoods, decided } from './sheet-lines.js';
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
 * The load sheet as it is printed: one page; a second stop gets a page of its own, with the same head, version and code.
 * From the top in the order of the work; every total of the sheet stands below the fold line.
 */
export const loadSheetPages = (sheet: LoadSheet, print: SheetPrint): readonly Block[] => {
  const legs = loadedLegs(sheet);
  return legs.map((leg, index) => {
    const page: SheetPage = { sheet, print, leg, page: index + 1, pages: legs.length };
    return {
      ...(isCrowded(sheet, leg) ? { fontSize: 9 } : {}),
      stack: [
        sheetHead(page),
        drumTable(page),
        foldLine('fold back here until the hand totals are written'),
        weightsAndLines(page),
        acrossThePage(sheet, sheet.legs[leg]!),
        sheetFoot(page),
      ],
    };
  });
};

/** At the left what is added up and what was decided; at the right the way home, its fuel, and the dangerous goods. */
const weightsAndLines = ({ sheet, leg }: SheetPage): Block => ({
  columns: [
    {
      stack: [weightsTable(sheet.legs[leg]!, isCrowded(sheet, leg)), decided(sheet, leg)],
      width: 354,
    },
    {
      stack: [
        ...homeTables(sheet, leg),
        { text: sheet.fuelWords, margin: [0, 3, 0, 4] },
        dangerousGoods(sheet, sheet.legs[leg]!),
      ],
      width: '*',
    },
  ],
  columnGap: 6,
  margin: [0, 0, 0, 2],
});

/** Legs with something aboard; the first where nothing is carried at all. */
const loadedLegs = (sheet: LoadSheet): readonly number[] => {
  const loaded = sheet.legs.flatMap(({ totals }, leg) => (totals.items.length > 0 ? [leg] : []));
  return loaded.length > 0 ? loaded : [0];
};
