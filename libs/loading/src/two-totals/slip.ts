import { printNumber } from '@drumline/units';
import type { SheetItem } from './sheet-item.js';

export type SlipKind =
  | 'rounding'
  | 'kg for lb'
  | 'lb for kg'
  | 'digits swapped'
  | 'left out'
  | 'counted twice'
  | 'gross for net'
  | 'before taxi'
  | 'planned weight'
  | 'wrong drum'
  | 'one digit'
  | 'ten times';

/** A slip that would explain why two totals differ. It never says which total is right. */
export interface Slip {
  readonly kind: SlipKind;
  readonly title: string;
  readonly words: string;
}

/** Two totals that differ, and what stands on the sheet. */
export interface SlipQuestion {
  readonly of: 'load' | 'take-off weight';
  /** By the sheet, whole lb. */
  readonly sheet: number;
  /** By hand or by the aircraft, whole lb. */
  readonly typed: number;
  readonly items: readonly SheetItem[];
  /** Drums that are not on the sheet and could have been taken for one that is. */
  readonly otherDrums: readonly SheetItem[];
  readonly taxiLb: number;
  /** The total while every drum counted as planned; null: not planned. */
  readonly planned: number | null;
}

export type SlipFinder = (question: SlipQuestion) => readonly Slip[];

export const apartOf = ({ sheet, typed }: SlipQuestion): number => Math.abs(sheet - typed);

export const lbWords = (weight: number): string => `${printNumber(weight)} lb`;

/** "0447 in R1L", "0447 in R1L, and of 0450 in R2R". */
export const namesWords = (items: readonly SheetItem[]): string =>
  items.map(({ name }) => name).join(', and of ');

/** Whether two figures have the same digits with just two of them changed over. */
export function twoDigitsSwapped(one: number, other: number): readonly [string, string] | null {
  const a = String(one);
  const b = String(other);
  if (a.length !== b.length) return null;
  const places = [...a].flatMap((digit, at) => (digit === b[at] ? [] : [at]));
  const [left, right] = places;
  if (places.length !== 2 || left === undefined || right === undefined) return null;
  return a[left] === b[right] && a[right] === b[left] ? [a[left]!, a[right]!] : null;
}
