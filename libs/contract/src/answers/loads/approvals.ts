import { z } from 'zod';
import { isoDate } from '../field.js';

export const authorityApprovalAnswer = z
  .strictObject({
    number: z.string(),
    authority: z.string(),
    scope: z.string().describe('What it is for, in its own words.'),
    legs: z
      .array(z.tuple([z.string(), z.string()]))
      .nullable()
      .describe('Legs it covers, either way; null: every leg.'),
    aircraft: z.array(z.string()).nullable().describe('Aircraft it covers; null: all.'),
    mostDrums: z.number().nullable(),
    mostPassengers: z.number().nullable(),
    conditions: z.string(),
    from: isoDate,
    until: isoDate.describe('Last day on which it holds.'),
    enteredBy: z.string(),
    confirmedBy: z.string().nullable().describe('The second person.'),
  })
  .meta({
    id: 'AuthorityApproval',
    description: 'An approval or exemption of the authority, as it stands on file.',
  });

export const particularAnswer = z
  .strictObject({
    label: z.string(),
    value: z.string().nullable().describe('Null: to be written in by hand.'),
  })
  .meta({ id: 'Particular' });

export const passengersAndDrumsAnswer = z.union([
  z.strictObject({ allowed: z.literal(true), by: z.literal('nothing to rule on'), words: z.null() }),
  z.strictObject({ allowed: z.literal(true), by: authorityApprovalAnswer, words: z.string() }),
  z.strictObject({ allowed: z.literal(false), words: z.string() }),
]);
