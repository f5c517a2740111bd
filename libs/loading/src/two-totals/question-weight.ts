import {
  type Kilograms,
  kilograms,
  kilogramsFromPounds,
  type Litres,
  type Pounds,
  pounds,
  poundsFromKilograms,
  print,
  printNumber,
} from '@drumline/units';
import { countWords } from '../wording.js';

/** Share of the expected weight under and over which a typed figure is asked about. */
const least = 0.7;
const most = 1.4;

/**
 * A question about a weight typed into a field of one unit for so many drums, where it is far from what they weigh:
 * "1,078 in a lb field is light for 6 drums. Is it kg?" Null: plausible. Nothing is refused; the person answers.
 */
export function questionWeight(
  typed: number,
  unit: 'kg' | 'lb',
  drums: { readonly count: number; readonly grossKg: Kilograms },
): string | null {
  if (drums.count === 0) return null;
  const plannedKg = kilograms(drums.count * drums.grossKg);
  const asTyped = (unit === 'kg' ? typed : kilogramsFromPounds(pounds(typed))) / plannedKg;
  if (isNear(asTyped)) return null;
  const inOtherUnit = (unit === 'kg' ? kilogramsFromPounds(pounds(typed)) : typed) / plannedKg;
  const about = unit === 'kg' ? print(plannedKg, 'kg') : print(poundsFromKilograms(plannedKg), 'lb');
  const question = isNear(inOtherUnit)
    ? `Is it ${unit === 'kg' ? 'lb' : 'kg'}?`
    : `They weigh about ${about}.`;
  return `${printNumber(typed)} in a ${unit} field is ${asTyped < 1 ? 'light' : 'heavy'} for ${countWords(drums.count, 'drum')}. ${question}`;
}

/**
 * A question about a limit typed in lb for a strip, beside what the type may weigh anywhere: "Is it kg?" where it is far from
 * that in lb and near it in kg. Null: plausible. Nothing is refused; the person answers.
 */
export function questionLimit(typedLb: Pounds, ofTheType: Pounds): string | null {
  const isKilograms =
    !isNear(typedLb / ofTheType) && isNear(poundsFromKilograms(kilograms(typedLb)) / ofTheType);
  return isKilograms ? 'Is it kg?' : null;
}

/**
 * A question about the weight of one drum that would be more fuel than it holds to the brim: "250 kg would be 288 L of fuel".
 * Null: it goes in. Nothing is refused; the person answers.
 */
export function questionFill(
  typedKg: Kilograms,
  { litres, brimLitres }: { readonly litres: Litres; readonly brimLitres: Litres },
): string | null {
  if (litres <= brimLitres) return null;
  return `${print(typedKg, 'kg')} would be ${print(litres, 'L')} of fuel, and a drum holds ${print(brimLitres, 'L')}. Weighed with its pallet, or in lb?`;
}

const isNear = (share: number): boolean => share >= least && share <= most;
