import { type Pounds, print } from '@drumline/units';
import { compareWithSheet, type SheetFigures } from './with-sheet.js';

/** What a crew without a screen says stands on the sheet that it was loaded by. */
export interface ToldSheet {
  readonly means: 'paper' | 'radio';
  readonly version: number;
  /** As printed, whole pounds. */
  readonly loadLb: Pounds;
  readonly takeOffLb: Pounds;
}

/**
 * What a crew wrote or said of its sheet beside base's own sheet of that version with the drums that are aboard, in
 * sentences with the likely slips; empty: they agree within the tolerance, lb. Which is right is not said.
 */
export function unlikeOwnTotals(own: SheetFigures, told: ToldSheet, toleranceLb: Pounds): readonly string[] {
  const { means, version } = told;
  const pairs = [
    ['load', own.totals.loadLb, told.loadLb],
    ['take-off weight', own.totals.takeoffLb, told.takeOffLb],
  ] as const;
  return pairs.flatMap(([of, bySheetLb, typedLb]) => {
    const compared = compareWithSheet(own, { of, bySheetLb, typedLb, toleranceLb });
    if (compared.agrees) return [];
    const slips = compared.slips.map(({ title, words }) => `${title}: ${words}`);
    const how = means === 'radio' ? 'as said by radio' : 'as written on paper';
    const arithmetic = `The ${of} by base's sheet of version ${version}, and ${how}: ${compared.words}; ${print(toleranceLb, 'lb')} is accepted.`;
    return [[arithmetic, ...slips, compared.advice].join(' ')];
  });
}

/** That a check code read off a sheet is not the one of base's own sheet of that version; null: they are the same. */
export function unlikeOwnCode(own: string, told: string, version: number): string | null {
  const read = told.trim().toUpperCase();
  return read === own
    ? null
    : `The check code of base's sheet of version ${version} is ${own}, and ${read} of the sheet that was loaded by: they are not the same sheet, or the code is misread. Read both again, line by line.`;
}
