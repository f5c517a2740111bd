import { toleranceOfCount } from '@drumline/stock';
import { litres } from '@drumline/units';
import { z } from 'zod';
import { useRead } from '../api/index.js';

const stockSchema = z.object({ items: z.array(z.object({ place: z.string(), bookLitres: z.number() })) });
const policySchema = z.object({
  data: z.object({
    countTolerance: z.object({
      percentOfBook: z.number(),
      litresPerOpenDrum: z.number(),
      reference: z.string(),
    }),
  }),
});

interface Book {
  readonly litres: number;
  /** As the server will judge a count: the operator's share of the book, or so many litres an open drum. */
  readonly toleranceLitres: number;
}

/** Undefined: not read yet, or no place. */
export const useBook = (place: string, openDrums: number): Book | undefined => {
  const tolerance = useRead('/api/policy/current', policySchema).value?.data.countTolerance;
  const found = useRead('/api/stock', stockSchema).value?.items.find((each) => each.place === place);
  if (tolerance === undefined || found === undefined) return undefined;
  const book = litres(found.bookLitres);
  const rule = { ...tolerance, litresPerOpenDrum: litres(tolerance.litresPerOpenDrum) };
  return { litres: book, toleranceLitres: toleranceOfCount(book, openDrums, rule) };
};
