import type { Pounds } from '@drumline/units';
import type { LoadSheet } from '../load-sheet/load-sheet.js';
import { comparisonWords } from './comparison-words.js';
import { compareWithSheet, type SheetFigures } from './with-sheet.js';

/** What a crew says of the sheet that it was loaded by. */
export interface ToldSheet {
  readonly means: 'screen' | 'phone' | 'paper' | 'radio';
  readonly version: number;
  /** As printed, whole pounds. */
  readonly loadLb: Pounds;
  readonly takeOffLb: Pounds;
  /** As read off it; absent: nobody has read it. */
  readonly checkCode?: string | undefined;
  /** What it says against the load; absent: nothing. */
  readonly doesNotHold?: string | undefined;
}

/** Base's own sheet of that flight; what is null cannot be made by the facts. */
export interface OwnSheet {
  readonly version: number;
  /** With the drums that are aboard. */
  readonly figures: SheetFigures | null;
  /** With the drums that are aboard, where they stand. */
  readonly standing: Pick<LoadSheet, 'holds' | 'faults'> | null;
  /** With the drums that were set aside, as it was printed. */
  readonly checkCode: string | null;
  /** Null: the operator has said none, and no totals are compared. */
  readonly toleranceLb: Pounds | null;
}

/**
 * What a crew wrote or said of its sheet beside base's own sheet of that version, in sentences with the likely slips.
 * Empty: they agree within the tolerance, or it came from a phone or a screen, which has the sheet itself. Which is right is not said.
 */
export function unlikeOwnSheet(own: OwnSheet, told: ToldSheet): readonly string[] {
  const { means, version, checkCode } = told;
  if ((means !== 'paper' && means !== 'radio') || version !== own.version) return [];
  const code =
    checkCode === undefined || own.checkCode === null
      ? null
      : unlikeOwnCode(own.checkCode, checkCode, version);
  return [...unlikeOwnTotals(own, told, means), ...(code === null ? [] : [code])];
}

function unlikeOwnTotals(
  { figures, toleranceLb }: OwnSheet,
  { version, loadLb, takeOffLb }: ToldSheet,
  means: 'paper' | 'radio',
): readonly string[] {
  if (figures === null || toleranceLb === null) return [];
  const how = means === 'radio' ? 'as said by radio' : 'as written on paper';
  const pairs = [
    ['load', figures.totals.loadLb, loadLb],
    ['take-off weight', figures.totals.takeoffLb, takeOffLb],
  ] as const;
  return pairs.flatMap(([of, bySheetLb, typedLb]) => {
    const compared = compareWithSheet(figures, { of, bySheetLb, typedLb, toleranceLb });
    const what = `The ${of} by base's sheet of version ${version}, and ${how}`;
    return compared.agrees ? [] : [comparisonWords(what, compared, toleranceLb)];
  });
}

/** That a check code read off a sheet is not the one of base's own sheet of that version; null: they are the same. */
export function unlikeOwnCode(own: string, told: string, version: number): string | null {
  const read = told.trim().toUpperCase();
  return read === own
    ? null
    : `The check code of base's sheet of version ${version} is ${own}, and ${read} of the sheet that was loaded by: they are not the same sheet, or the code is misread. Read both again, line by line.`;
}

/**
 * Why a load that is reported keeps not every limit, as a sentence; null: it does, or nobody can say. As its crew says of
 * its own sheet, which may know weights that base does not; else by base's own sheet of that version.
 */
export function whyDoesNotHold(own: OwnSheet, { version, doesNotHold }: ToldSheet): string | null {
  if (doesNotHold !== undefined)
    return `the load does not hold by the sheet it was loaded by: ${doesNotHold}`;
  const { standing } = own;
  if (version !== own.version || standing === null || standing.holds) return null;
  return `the load does not hold by base's sheet: ${standing.faults.join('. ')}.`;
}
