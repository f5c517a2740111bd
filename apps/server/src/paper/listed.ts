import { gatherPassengers, type LoadSheet, type SheetCargo, type SheetDrum } from '@drumline/loading';

/** What a page lists of a leg: each drum a row, passengers together, each lot of freight. */
export interface Listed {
  readonly drums: readonly SheetDrum[];
  readonly cargo: readonly SheetCargo[];
}

export const listedOn = (sheet: LoadSheet, leg: number): Listed => ({
  drums: sheet.drums.filter(({ offAfterLeg }) => leg <= offAfterLeg),
  cargo: gatherPassengers(sheet.cargo.filter(({ firstLeg, lastLeg }) => firstLeg <= leg && leg <= lastLeg)),
});

/** More rows than this, and the sentences of the leg go on a page of their own: nothing is set smaller. */
const mostRows = 8;

export const isCrowded = (sheet: LoadSheet, leg: number): boolean => {
  const { drums, cargo } = listedOn(sheet, leg);
  return drums.length + cargo.length > mostRows;
};
