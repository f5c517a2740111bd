import type { SheetTotals } from '../load-sheet/load-sheet.js';
import { compareTotals, type TotalsComparison, type TotalsQuestion } from './compare-totals.js';
import type { SheetItem } from './sheet-item.js';

/** What a sheet says of one leg, and the drums that could have been taken for those on it. */
export interface SheetFigures {
  readonly totals: SheetTotals;
  readonly otherDrums: readonly SheetItem[];
}

/**
 * One pair of totals, with the slips that what stands on the sheet would explain; whole pounds. Null: there is no sheet,
 * and the figures alone are compared.
 */
export function compareWithSheet(
  at: SheetFigures | null,
  typed: Pick<TotalsQuestion, 'of' | 'bySheetLb' | 'typedLb' | 'toleranceLb'>,
): TotalsComparison {
  if (at === null)
    return compareTotals({
      ...typed,
      items: [],
      otherDrums: [],
      fuelLb: notKnown,
      taxiFuelLb: notKnown,
      tripFuelLb: notKnown,
      operatingLb: notKnown,
      plannedLb: null,
    });
  const { totals, otherDrums } = at;
  const { items, fuelLb, taxiFuelLb, tripFuelLb, operatingLb, plannedLoadLb, plannedTakeoffLb } = totals;
  const plannedLb = typed.of === 'load' ? plannedLoadLb : plannedTakeoffLb;
  return compareTotals({
    ...typed,
    items,
    otherDrums,
    fuelLb,
    taxiFuelLb,
    tripFuelLb,
    operatingLb,
    plannedLb,
  });
}

/** Why the kg of the sheet are not quite its lb, where that is about what is apart; null: it would explain nothing. */
export const roundingBeside = ({ roundingWords }: SheetTotals, load: TotalsComparison): string | null =>
  load.differenceLb === 0 || load.slips[0]?.kind === 'rounding' ? roundingWords : null;

const notKnown = 0 as TotalsQuestion['taxiFuelLb'];
