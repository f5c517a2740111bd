import { z } from 'zod';
import { type Answer, lb } from '../field.js';

export const slipKind = z.enum([
  'wrong drum',
  'rounding',
  'kg for lb',
  'lb for kg',
  'digits swapped',
  'left out',
  'counted twice',
  'gross for net',
  'before taxi',
  'planned weight',
  'one digit',
  'load left out',
  'fuel left out',
  'operating weight left out',
  'landing weight',
  'ten times',
  'two weights',
]);

export const slipAnswer = z
  .strictObject({
    kind: slipKind,
    title: z.string(),
    words: z.string(),
  })
  .meta({
    id: 'Slip',
    description: 'A slip that would explain why two totals differ. It never says which total is right.',
  });

export const checkCodeAnswer = z
  .strictObject({
    version: z.number().int().describe('Version of the flight as it is now.'),
    checkCode: z
      .string()
      .nullable()
      .describe('Of the sheet of that version on its own day, be it over; null: there is no sheet of it.'),
  })
  .meta({ id: 'CheckCodeAnswer', description: 'Answer of GET /api/flights/:id/check-code.' });
export type CheckCodeAnswer = Answer<typeof checkCodeAnswer>;

export const totalsAnswer = z
  .strictObject({
    of: z.enum(['load', 'take-off weight']),
    bySheetLb: lb,
    typedLb: lb,
    toleranceLb: lb,
    roundingWords: z.string().nullable().describe('What rounding row by row makes; null: nothing.'),
    agrees: z.boolean(),
    differenceLb: lb,
    words: z.string().describe('The arithmetic: "8,528 lb and 8,258 lb: 270 lb apart".'),
    slips: z
      .array(slipAnswer)
      .describe(
        'Slips that would explain the difference, the likeliest first; none where the totals are equal.',
      ),
    advice: z.string().describe('What to do next.'),
  })
  .meta({ id: 'TotalsAnswer', description: 'Answer of POST /api/flights/:id/totals.' });
export type TotalsAnswer = Answer<typeof totalsAnswer>;
