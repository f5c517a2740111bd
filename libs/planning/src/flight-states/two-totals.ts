import type { Pounds } from '@drumline/units';
import { poundWords } from '../wording.js';

/** Two pairs of weights, each twice from different hands, as printed integers. */
export interface TwoTotals {
  readonly load: { readonly bySheetLb: Pounds; readonly byHandLb: Pounds };
  readonly takeOff: { readonly bySheetLb: Pounds; readonly byAircraftLb: Pounds };
}

/** A pair whose figures are further apart than the operator accepts. */
export interface TotalsApart {
  readonly pair: keyof TwoTotals;
  readonly apartLb: Pounds;
  /** Both figures and the arithmetic; which of them is right is not for a program to say. */
  readonly words: string;
}

/** The pairs that differ by more than `toleranceLb`; empty: the totals agree. */
export function totalsApart({ load, takeOff }: TwoTotals, toleranceLb: Pounds): readonly TotalsApart[] {
  const pairs = [
    { pair: 'load', name: 'Load', sheet: load.bySheetLb, other: load.byHandLb, by: 'by hand' },
    {
      pair: 'takeOff',
      name: 'Take-off weight',
      sheet: takeOff.bySheetLb,
      other: takeOff.byAircraftLb,
      by: 'by the aircraft',
    },
  ] as const;
  return pairs.flatMap(({ pair, name, sheet, other, by }) => {
    const apart = Math.abs(sheet - other);
    if (apart <= toleranceLb) return [];
    const [more, less] = sheet > other ? [sheet, other] : [other, sheet];
    const figures = `${poundWords(sheet)} by the sheet, ${poundWords(other)} ${by}`;
    const arithmetic = `${poundWords(more)} less ${poundWords(less)} is ${poundWords(apart)}`;
    const words = `${name}: ${figures}. ${arithmetic}; ${poundWords(toleranceLb)} is accepted.`;
    return [{ pair, apartLb: apart as Pounds, words }];
  });
}
