import { type CountTolerance, toleranceOfCount } from '@drumline/stock';
import { type Litres, litres } from '@drumline/units';
import { z } from 'zod';
import { useRead } from '../api/index.js';

const stockSchema = z.object({ items: z.array(z.object({ place: z.string(), bookLitres: z.number() })) });
const policySchema = z.object({
  data: z.object({
    drum: z.object({ fillLitres: z.number() }),
    countTolerance: z.object({
      percentOfBook: z.number(),
      litresPerOpenDrum: z.number(),
      reference: z.string(),
    }),
  }),
});

export interface CountRules {
  /** In a full drum. */
  readonly fillLitres: Litres;
  readonly countTolerance: CountTolerance;
}

/** What a count is held against; undefined: not read yet. */
export const useCountRules = (): CountRules | undefined => {
  const policy = useRead('/api/policy/current', policySchema).value?.data;
  if (policy === undefined) return undefined;
  const { drum, countTolerance } = policy;
  return {
    fillLitres: litres(drum.fillLitres),
    countTolerance: { ...countTolerance, litresPerOpenDrum: litres(countTolerance.litresPerOpenDrum) },
  };
};

interface Book {
  readonly litres: number;
  /** As the server will judge a count: the operator's share of the book, or so many litres an open drum. */
  readonly toleranceLitres: number;
}

/** Undefined: not read yet, or no place. */
export const useBook = (place: string, openDrums: number): Book | undefined => {
  const rules = useCountRules();
  const found = useRead('/api/stock', stockSchema).value?.items.find((each) => each.place === place);
  if (rules === undefined || found === undefined) return undefined;
  const book = litres(found.bookLitres);
  return { litres: book, toleranceLitres: toleranceOfCount(book, openDrums, rules.countTolerance) };
};
