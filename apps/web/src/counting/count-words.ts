import { unlikeItsDrums } from '@drumline/stock';
import { litres } from '@drumline/units';
import { inWords } from '../ui/index.js';
import type { Counted } from './counted.js';
import type { CountRules } from './use-book.js';

/** "250 L short of the book of 2,400 L, 48 L allowed: ..." of a count against the book. */
export const countAgainstBook = (counted: number, book: number, tolerance: number): string => {
  const over = counted - book;
  if (Math.abs(over) <= tolerance)
    return `${inWords(Math.abs(over), 'L')} ${over < 0 ? 'under' : over > 0 ? 'over' : 'from'} the book of ${inWords(book, 'L')}, ${inWords(tolerance, 'L')} allowed: agrees.`;
  const uses =
    over < 0 ? `the projection uses ${inWords(counted, 'L')}` : 'the projection stays with the book';
  return `${inWords(Math.abs(over), 'L')} ${over < 0 ? 'short of' : 'over'} the book of ${inWords(book, 'L')}, ${inWords(tolerance, 'L')} allowed: a difference case opens, and ${uses} until two others have closed it.`;
};

/** What is asked of a count before it is kept: its litres and its drums do not go together. Empty: nothing. */
export const countDoubts = (
  { litres: found, drums: [sealedDrums, openDrums] }: Pick<Counted, 'litres' | 'drums'>,
  rules: CountRules | undefined,
): readonly string[] => {
  if (rules === undefined || found === undefined || sealedDrums === undefined || openDrums === undefined)
    return [];
  const unlike = unlikeItsDrums({ litres: litres(found), sealedDrums, openDrums }, rules);
  return unlike === null ? [] : [`${unlike}. Were the drums seen, or are they those of the book?`];
};
