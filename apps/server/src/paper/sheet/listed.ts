import { gatherPassengers, type LoadSheet, type SheetCargo, type SheetDrum } from '@drumline/loading';
import { type PaperSize, papers } from '../pdf/paper-size.js';

/** What a page lists of a leg: each drum a row, passengers together, each lot of freight. */
export interface Listed {
  readonly drums: readonly SheetDrum[];
  readonly cargo: readonly SheetCargo[];
}

export const listedOn = (sheet: LoadSheet, leg: number): Listed => ({
  drums: sheet.drums.filter(({ offAfterLeg }) => leg <= offAfterLeg),
  cargo: gatherPassengers(sheet.cargo.filter(({ firstLeg, lastLeg }) => firstLeg <= leg && leg <= lastLeg)),
});

/** Rows for which a page is laid out, on the smaller paper without a point to spare. */
const fullRows = 6;

/** In points: a row of the list, and a line of what is said across the page. */
const rowHeight = 16;
const lineHeight = 14;

/** Signs that a line across the page holds. */
const lineSigns = 100;

/** Lines of assumptions of a usual flight: a second stop and a surface that nobody knows make more. */
const usualAssumed = 3;

/**
 * Room to write in beside what is signed, in points: what the paper has for it, less what a leg lists and says beyond a usual
 * full one. Null: more than one page holds, and the sentences of the leg go on a page of their own; nothing is set smaller.
 */
export const roomToWriteIn = (sheet: LoadSheet, leg: number, paper: PaperSize): number | null => {
  const { drums, cargo } = listedOn(sheet, leg);
  const said = [sheet.notInBookWords, sheet.legs[leg]!.passengersAndDrums.words];
  const assumed = Math.max(0, Math.ceil(sheet.assumptions.length / lineSigns) - usualAssumed);
  const lines = said.reduce((sum, words) => sum + Math.ceil((words ?? '').length / lineSigns), assumed);
  const more = (drums.length + cargo.length - fullRows) * rowHeight + lines * lineHeight;
  const room = papers[paper].moreToWriteIn;
  return more > room ? null : Math.min(room, room - more);
};
