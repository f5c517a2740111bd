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
  | 'load left out'
  | 'fuel left out'
  | 'operating weight left out'
  | 'landing weight'
  | 'planned weight'
  | 'wrong drum'
  | 'one digit'
  | 'ten times'
  | 'two weights';

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
  /** At the start of the leg, taxi included; 0: not known. */
  readonly fuelLb: number;
  readonly taxiLb: number;
  /** From take-off to landing; 0: not known. */
  readonly tripLb: number;
  /** 0: not known. */
  readonly operatingLb: number;
  /** The total while every drum counted as planned; null: not planned. */
  readonly planned: number | null;
}

export type SlipFinder = (question: SlipQuestion) => readonly Slip[];

export const apartOf = ({ sheet, typed }: SlipQuestion): number => Math.abs(sheet - typed);

export const lbWords = (weight: number): string => `${printNumber(weight)} lb`;

/** "0447 in R1L", "0447 in R1L, and of 0450 in R2R"; of more than three the rest by number. */
export const namesWords = (items: readonly { readonly name: string }[]): string => {
  const named = items.length > 3 ? items.slice(0, 2) : items;
  const more = items.length - named.length;
  return [...named.map(({ name }) => name), ...(more > 0 ? [`${more} more`] : [])].join(', and of ');
};

/** What would explain a difference, and the difference that it makes, lb. */
export interface Fit<T> {
  readonly of: T;
  readonly lb: number;
}

/**
 * The nearest of those that would explain the difference, lb, where no more than `roomLb` is missing; half a pound is what
 * a printed weight is rounded by, so all that fit within it fit alike. A drum that fits is never named beside one that fits
 * better.
 */
export function nearest<T>(apartLb: number, fits: readonly Fit<T>[], roomLb: number): readonly T[] {
  const missed = fits.map(({ of, lb }) => ({ of, lb: wholeMiss(apartLb - lb) }));
  const least = Math.min(...missed.map(({ lb }) => lb));
  return least > roomLb ? [] : missed.filter(({ lb }) => lb === least).map(({ of }) => of);
}

const wholeMiss = (lb: number): number => Math.max(0, Math.ceil(Math.abs(lb) - 0.5 - 1e-6));

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
