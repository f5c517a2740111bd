import { inWords } from '../ui/index.js';

/** "250 L short of the book of 2,400 L, 48 L allowed: ..." of a count against the book. */
export const countAgainstBook = (counted: number, book: number, tolerance: number): string => {
  const over = counted - book;
  if (Math.abs(over) <= tolerance)
    return `${inWords(Math.abs(over), 'L')} ${over < 0 ? 'under' : over > 0 ? 'over' : 'from'} the book of ${inWords(book, 'L')}, ${inWords(tolerance, 'L')} allowed: agrees.`;
  const uses =
    over < 0 ? `the projection uses ${inWords(counted, 'L')}` : 'the projection stays with the book';
  return `${inWords(Math.abs(over), 'L')} ${over < 0 ? 'short of' : 'over'} the book of ${inWords(book, 'L')}, ${inWords(tolerance, 'L')} allowed: a difference case opens, and ${uses} until two others have closed it.`;
};
