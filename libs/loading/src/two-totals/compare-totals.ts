import { type Pounds, pounds, print } from '@drumline/units';
import { digitsSwapped, oneDigit, tenTimes } from './digit-slips.js';
import { grossForNet, leftOutOrTwice, plannedWeight, rounding, wrongDrum } from './drum-slips.js';
import type { SheetItem } from './sheet-item.js';
import type { Slip, SlipFinder, SlipQuestion } from './slip.js';
import { beforeTaxi, fuelLeftOut, landingWeight, loadLeftOut, operatingLeftOut } from './takeoff-slips.js';
import { twoWeights } from './two-weights.js';
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
  /** At the start of the leg, taxi included; 0: not known. */
  readonly fuelLb: Pounds;
  readonly taxiFuelLb: Pounds;
  /** From take-off to landing; 0: not known. */
  readonly tripFuelLb: Pounds;
  /** 0: not known. */
  readonly operatingLb: Pounds;
  /** The same total with drums of planning weight; null: none. */
  readonly plannedLb: Pounds | null;
}

/** How two totals compare. No word in it says which one is right. */
export interface TotalsComparison {
  readonly agrees: boolean;
  readonly differenceLb: Pounds;
  /** The arithmetic: "8,528 lb and 8,258 lb: 270 lb apart". */
  readonly words: string;
  /** Slips that would explain the difference, the likeliest first, within the tolerance too; none where the totals are equal. */
  readonly slips: readonly Slip[];
  /** What to do next. */
  readonly advice: string;
}

/** From the most telling to the least: a single digit explains much. */
const finders: readonly SlipFinder[] = [
  kilogramsForPounds,
  poundsForKilograms,
  digitsSwapped,
  landingWeight,
  leftOutOrTwice,
  grossForNet,
  loadLeftOut,
  fuelLeftOut,
  operatingLeftOut,
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
  const { toleranceLb } = question;
  const asked = inWholePounds(question);
  const { sheet, typed } = asked;
  const differenceLb = pounds(Math.abs(sheet - typed));
  const agrees = differenceLb <= toleranceLb;
  const slips = differenceLb === 0 ? [] : slipsFor(asked);
  const words = `${print(pounds(sheet), 'lb')} and ${print(pounds(typed), 'lb')}: ${differenceLb === 0 ? 'the same' : `${print(differenceLb, 'lb')} apart`}`;
  return { agrees, differenceLb, words, slips, advice: adviceOn(agrees, slips) };
}

const inWholePounds = (question: TotalsQuestion): SlipQuestion => ({
  of: question.of,
  sheet: Math.round(question.bySheetLb),
  typed: Math.round(question.typedLb),
  items: question.items,
  otherDrums: question.otherDrums,
  fuelLb: Math.round(question.fuelLb),
  taxiLb: Math.round(question.taxiFuelLb),
  tripLb: Math.round(question.tripFuelLb),
  operatingLb: Math.round(question.operatingLb),
  planned: question.plannedLb === null ? null : Math.round(question.plannedLb),
});

/** The simplest only: beside a rounding nothing is looked for, and two slips at once only where no telling single one fits. */
function slipsFor(asked: SlipQuestion): readonly Slip[] {
  const [only] = rounding(asked);
  if (only) return [only];
  const single = finders.flatMap((find) => find(asked));
  return single.every(({ kind }) => kind === 'one digit') ? [...single, ...twoWeights(asked)] : single;
}

function adviceOn(agrees: boolean, slips: readonly Slip[]): string {
  const looksLikeSlip = slips.some(({ kind }) => kind !== 'rounding');
  if (agrees) return `Within the tolerance.${looksLikeSlip ? ' A slip may still be in it: look again.' : ''}`;
  if (slips.length === 0) return 'No slip that we know. Count the drums, then add both again.';
  if (slips.length > 2) return 'More slips would explain this. Add both again.';
  return 'Look at both figures where they came from, then add again.';
}
