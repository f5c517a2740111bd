import { z } from 'zod';
import { instant } from '../field.js';
import { shownProposalAnswer } from '../people/proposals.js';

/** A thing of the territory; `data` as it was sent. */
export const entryOf = <Data extends z.ZodType>(data: Data) =>
  z.strictObject({ id: z.string(), version: z.number(), changedAt: instant, data });

/** The same in a list, with who changed it last. */
export const listedEntryOf = <Data extends z.ZodType>(data: Data) =>
  entryOf(data).extend({ changedBy: z.string().nullable().describe('Null: the program itself') });

/** A change that waits for a second person. */
export const proposedAnswer = z.strictObject({ proposal: shownProposalAnswer });
