import { kilograms, pounds } from '@drumline/units';
import { compareTotals, type TotalsQuestion } from '../two-totals/compare-totals.js';
import type { SheetItem } from '../two-totals/sheet-item.js';

/** The six drums of F05 as the demo territory weighs them. */
const drum = (number: string, place: string, gross: number, tare: number): SheetItem => ({
  name: `${number} in ${place}`,
  kg: kilograms(gross),
  tareKg: kilograms(tare),
});
export const items = [
  drum('0447', 'R1L', 179.0, 19.0),
  drum('0448', 'R1R', 179.7, 19.7),
  drum('0449', 'R2L', 180.4, 20.4),
  drum('0450', 'R2R', 179.0, 19.0),
  drum('0451', 'R3L', 179.7, 19.7),
  drum('0452', 'R3R', 180.4, 20.4),
];

export const question = (typed: number, changes: Partial<TotalsQuestion> = {}): TotalsQuestion => ({
  of: 'load',
  bySheetLb: pounds(2378),
  typedLb: pounds(typed),
  toleranceLb: pounds(0),
  items,
  otherDrums: [],
  fuelLb: pounds(1200),
  taxiFuelLb: pounds(30),
  tripFuelLb: pounds(397),
  operatingLb: pounds(4980),
  plannedLb: pounds(2381),
  ...changes,
});
export const takeoff = (typed: number, changes: Partial<TotalsQuestion> = {}) =>
  question(typed, {
    of: 'take-off weight',
    bySheetLb: pounds(8528),
    toleranceLb: pounds(10),
    plannedLb: pounds(8531),
    ...changes,
  });
export const kinds = (asked: TotalsQuestion) => compareTotals(asked).slips.map(({ kind }) => kind);
export const words = (asked: TotalsQuestion) => compareTotals(asked).slips.map((slip) => slip.words);
