import type { TypedTotal } from '@drumline/contract';
import {
  compareTotals,
  type LoadSheet,
  type SheetItem,
  type SheetLeg,
  type TotalsComparison,
} from '@drumline/loading';
import type { Pounds } from '@drumline/units';
import type { Board } from './board.service.js';
import type { Flight } from './flight.table.js';

/** The sheet by which a flight is loaded, and the drums that could have been taken for those on it. */
export interface SheetAtBase {
  readonly sheet: Pick<LoadSheet, 'drums' | 'legs'>;
  readonly otherDrums: readonly SheetItem[];
}

export const sheetAtBase = ({ scenario }: Board, flight: Flight, sheet: LoadSheet): SheetAtBase => {
  const named = new Set(sheet.drums.map(({ number }) => number));
  const otherDrums = scenario.drums
    .filter(({ number, place }) => place === flight.fromPlace && !named.has(number))
    .map(({ number, grossKg, tareKg }) => ({ name: number, kg: grossKg, tareKg }));
  return { sheet, otherDrums };
};

interface Typed extends TypedTotal {
  readonly bySheetLb: Pounds;
  readonly toleranceLb: Pounds;
}

/** One pair of totals, with the slips that what stands on the sheet would explain. Without a sheet: by the figures alone. */
export const compareWithSheet = (
  at: SheetAtBase | null,
  { of, typedLb, leg, bySheetLb, toleranceLb }: Typed,
): TotalsComparison => {
  const totals = at?.sheet.legs[leg]?.totals;
  return compareTotals({
    ...{ of, bySheetLb, typedLb, toleranceLb },
    items: totals?.items ?? [],
    otherDrums: at?.otherDrums ?? [],
    taxiFuelLb: totals?.taxiFuelLb ?? (0 as Pounds),
    plannedLb: totals === undefined ? null : plannedLb(of, totals),
  });
};

const plannedLb = (of: TypedTotal['of'], { plannedLoadLb, plannedTakeoffLb }: SheetLeg['totals']): Pounds =>
  of === 'load' ? plannedLoadLb : plannedTakeoffLb;
