import type { Pounds } from '@drumline/units';
import { comparisonWords } from './comparison-words.js';
import { compareWithSheet, type SheetFigures } from './with-sheet.js';

/** Both pairs as a loading is reported, whole pounds. */
export interface ReportedTotals {
  readonly load: { readonly bySheetLb: Pounds; readonly byHandLb: Pounds };
  readonly takeOff: { readonly bySheetLb: Pounds; readonly byAircraftLb: Pounds };
}

/**
 * The pairs of a reported loading further apart than the operator accepts, lb: figures, arithmetic and likely slips in
 * words; which is right is not said. `at`: the sheet of what is aboard, by which slips are looked for; null: there is none.
 */
export function totalsApart(
  { load, takeOff }: ReportedTotals,
  at: SheetFigures | null,
  toleranceLb: Pounds,
): readonly { readonly pair: keyof ReportedTotals; readonly words: string }[] {
  const pairs = [
    ['load', 'Load, by the sheet and by hand', 'load', load.bySheetLb, load.byHandLb],
    [
      'takeOff',
      'Take-off weight, by the sheet and by the aircraft',
      'take-off weight',
      takeOff.bySheetLb,
      takeOff.byAircraftLb,
    ],
  ] as const;
  return pairs.flatMap(([pair, what, of, bySheetLb, typedLb]) => {
    const compared = compareWithSheet(at, { of, bySheetLb, typedLb, toleranceLb });
    return compared.agrees ? [] : [{ pair, words: comparisonWords(what, compared, toleranceLb) }];
  });
}

/** Whether these are two people, by name alone: at a base without a line nobody can ask who is who. */
export const areTwoPeople = (one: string, other: string): boolean => {
  const [first, second] = [one, other].map((name) => name.trim().toLowerCase());
  return first !== '' && second !== '' && first !== second;
};
