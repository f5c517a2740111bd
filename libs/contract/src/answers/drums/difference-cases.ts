import { z } from 'zod';
import { instant, millilitres } from '../field.js';
import { shownProposalAnswer } from '../people/proposals.js';
import { countedAnswer, movementAnswer } from './movement.js';
import { notSeenAnswer, peopleWithDevice } from './not-seen.js';

export const listedCaseAnswer = z
  .strictObject({
    proposals: z.array(shownProposalAnswer),
    counted: countedAnswer.describe('The count that opened it, and the last one before it that was agreed.'),
    agreed: countedAnswer.nullable(),
    movementsSince: z
      .array(movementAnswer)
      .describe('What happened at the place since the last agreed count.'),
    notHeardFrom: z.array(notSeenAnswer).describe('Whose phones may hold a report that explains it.'),
    peopleWithDevice,
    count: z.string().describe('Id of the count that opened it.'),
    place: z.string(),
    countedBy: z.array(z.string()),
    countedMillilitres: millilitres,
    bookMillilitres: millilitres.describe(
      'The book at the moment of the count, with everything known today.',
    ),
    differenceMillilitres: z.number().describe('Count less book: negative, less was found.'),
    toleranceMillilitres: z.number(),
  })
  .meta({ id: 'ListedCase', description: 'With the ways of closing it that wait for a second person.' });

export const differenceCause = z.enum(['recount', 'missing report', 'spill', 'theft', 'unknown']);

export const caseClosingAnswer = z
  .strictObject({
    count: z.string(),
    cause: differenceCause,
    words: z.string(),
    by: z.string(),
    second: z.string(),
    at: instant,
  })
  .meta({
    id: 'CaseClosing',
    description: 'What two people found; the litres themselves move by entries of their own.',
  });

export const closedCaseAnswer = z
  .strictObject({
    closing: caseClosingAnswer,
    counted: countedAnswer.describe('The count that opened it.'),
  })
  .meta({ id: 'ClosedCase' });
