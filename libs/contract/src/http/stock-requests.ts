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
