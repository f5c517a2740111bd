import { z } from 'zod';
import { longText, moment, shortText } from './written-field.js';

const drumNumber = shortText('Number of the drum', '0447');
const batchId = shortText('Batch', 'J27-041');

/** Asked before a hold is set: what would follow from it. */
export const holdQuerySchema = z.union([
  z.strictObject({ batch: batchId }),
  z.strictObject({ drum: drumNumber }),
]);

export type HoldQuery = z.output<typeof holdQuerySchema>;

const causes = ['recount', 'missing report', 'spill', 'theft', 'unknown'] as const;

/** Closes a difference case; it is in force when two people, neither of whom counted, have agreed. */
export const caseClosingSchema = z.strictObject({
  cause: z.enum(causes).meta({ description: 'What was found', examples: ['missing report'] }),
  words: longText('In words', 'Two draws by H1 on Saturday were never reported; now entered.'),
});

export type CaseClosingRequest = z.output<typeof caseClosingSchema>;

/** A look back at what was known at a moment. */
export const knownAtSchema = z.strictObject({ at: moment('The moment', '2027-06-15T06:40Z') });

/** A raised thing is seen, with the words of whoever looked; or it is to be looked at again. */
export const raisedActSchema = z.strictObject({
  raised: longText('Id of the raised thing', 'not there | 0447 | 8f6f7c1e-6a3e-4a52-9c7b-0a4f7f0f4a11'),
  act: z.enum(['seen', 'open again']).meta({ description: 'What was done', examples: ['seen'] }),
  words: longText('In words', 'Asked the crew: it was 0474, now corrected.'),
});

export type RaisedActRequest = z.output<typeof raisedActSchema>;
