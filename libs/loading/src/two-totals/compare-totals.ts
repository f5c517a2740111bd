import { type Pounds, pounds, print } from '@drumline/units';
import { digitsSwapped, oneDigit, tenTimes } from './digit-slips.js';
import { beforeTaxi, grossForNet, leftOutOrTwice, plannedWeight, rounding, wrongDrum } from './drum-slips.js';
import type { SheetItem } from './sheet-item.js';
import type { Slip, SlipFinder } from './slip.js';
import { kilogramsForPounds, poundsForKilograms } from './unit-slips.js';

/** A total on the sheet and the same total found another way. */
export interface TotalsQuestion {
  readonly of: 'load' | 'take-off weight';
  /** Sum of the printed pounds. */
  readonly bySheetLb: Pounds;
  /** The hand total of a load; the aircraft's figure for a take-off weight. */
  readonly typedLb: Pounds;
  /** The operator's; a difference of just this much agrees. */
  readonly toleranceLb: Pounds;
  readonly items: readonly SheetItem[];
  /** Drums at the place that are not on the sheet; empty: not looked at. */
  readonly otherDrums: readonly SheetItem[];
  readonly taxiFuelLb: Pounds;
  /** The same total with drums of planning weight; null: none. */
  readonly plannedLb: Pounds | null;
}

/** How two totals compare. No word in it says which one is right. */
export interface TotalsComparison {
  readonly agrees: boolean;
  readonly differenceLb: Pounds;
  /** The arithmetic: "8,528 lb and 8,258 lb: 270 lb apart". */
  readonly words: string;
  /** Slips that would explain the difference, the likeliest first; none where the totals are equal. */
  readonly slips: readonly Slip[];
  /** What to do next. */
  readonly advice: string;
}

/** From the most telling to the least: a rounding explains itself, a single digit explains much. */
const finders: readonly SlipFinder[] = [
  rounding,
  kilogramsForPounds,
  poundsForKilograms,
  digitsSwapped,
  leftOutOrTwice,
  grossForNet,
  beforeTaxi,
  plannedWeight,
  wrongDrum,
  oneDigit,
  tenTimes,
];

/**
 * Compares a total on the sheet with the same total added by hand or given by the aircraft, and names the slips that
 * would explain a difference. Whole pounds. The caller hides the sheet's figure until the other is typed.
 */
export function compareTotals(question: TotalsQuestion): TotalsComparison {
  const { of, items, otherDrums, toleranceLb } = question;
  const sheet = Math.round(question.bySheetLb);
  const typed = Math.round(question.typedLb);
  const differenceLb = pounds(Math.abs(sheet - typed));
  const agrees = differenceLb <= toleranceLb;
  const planned = question.plannedLb === null ? null : Math.round(question.plannedLb);
  const asked = { of, sheet, typed, items, otherDrums, taxiLb: Math.round(question.taxiFuelLb), planned };
  const slips = differenceLb === 0 ? [] : finders.flatMap((find) => find(asked));
  const [first] = slips;
  const words = `${print(pounds(sheet), 'lb')} and ${print(pounds(typed), 'lb')}: ${differenceLb === 0 ? 'the same' : `${print(differenceLb, 'lb')} apart`}`;
  return {
    agrees,
    differenceLb,
    words,
    slips: agrees || first?.kind === 'rounding' ? slips.filter(({ kind }) => kind === 'rounding') : slips,
    advice: adviceOn(agrees, slips),
  };
}

function adviceOn(agrees: boolean, slips: readonly Slip[]): string {
  if (agrees) return 'Within the tolerance.';
  if (slips.length === 0) return 'No slip that we know. Count the drums, then add both again.';
  if (slips.length > 2) return 'Several slips would explain this. Add both again.';
  return 'Look at both figures where they came from, then add again.';
}
