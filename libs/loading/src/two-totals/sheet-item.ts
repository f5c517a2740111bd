import { type Kilograms, kilograms, type Pounds, pounds, poundsFromKilograms, print } from '@drumline/units';
import { printedLbOf } from '../printed-weights.js';

/** One row of the load as it stands on the sheet. */
export interface SheetItem {
  /** "0447 in R1L", "stores in NET1". */
  readonly name: string;
  /** Gross for a drum. */
  readonly kg: Kilograms;
  /** Null: not a drum. */
  readonly tareKg: Kilograms | null;
}

/** A column of weights in kg and in whole lb, and what lies between the two ways to add it. */
export interface ItemTotals {
  readonly kg: Kilograms;
  /** Sum of the printed whole pounds: the total on the sheet. */
  readonly lb: Pounds;
  /** The kg total converted once. */
  readonly kgAsLb: Pounds;
  /** Rounding row by row, as a sentence; null: the two agree. */
  readonly roundingWords: string | null;
}

/** Totals of a column: the whole pounds of its rows added, and its kg total converted, with the rounding between them. */
export function itemTotals(items: readonly SheetItem[]): ItemTotals {
  const kg = kilograms(items.reduce((sum, item) => sum + item.kg, 0));
  const lb = items.reduce((sum, item) => sum + printedLbOf(item.kg), 0);
  const kgAsLb = poundsFromKilograms(kg);
  const apart = Math.abs(lb - Math.round(kgAsLb));
  const roundingWords =
    apart === 0
      ? null
      : `${print(kg, 'kg', 1)} is ${print(kgAsLb, 'lb')}, row by row ${print(pounds(lb), 'lb')}: ${print(pounds(apart), 'lb')} is rounding`;
  return { kg, lb: pounds(lb), kgAsLb, roundingWords };
}

/** Most by which rounding row by row can move a total: half a pound a row. */
export const roundingRoomLb = (items: readonly SheetItem[]): number => items.length / 2;
