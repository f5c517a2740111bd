import {
  type Kilograms,
  kilograms,
  kilogramsFromPounds,
  pounds,
  poundsFromKilograms,
  print,
  printNumber,
} from '@drumline/units';
import { countWords } from '../wording.js';

/** Share of the planned weight under and over which a typed figure is asked about. */
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

const isNear = (share: number): boolean => share >= least && share <= most;
