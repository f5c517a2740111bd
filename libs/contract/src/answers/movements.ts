import { z } from 'zod';
import { raisedAnswer } from './drums.js';
import { type Answer, wholeList } from './field.js';
import { movementAnswer } from './movement.js';
import { shownProposalAnswer } from './proposals.js';
import { faultAnswer } from './words.js';

export const enteredMovementAnswer = z
  .strictObject({
    entry: z.number().describe('Its place in the order of arrival.'),
    movement: movementAnswer,
  })
  .meta({ id: 'EnteredMovement' });
export type EnteredMovement = Answer<typeof enteredMovementAnswer>;

export const reportedAnswer = z
  .discriminatedUnion('outcome', [
    z.strictObject({
      outcome: z.literal('in the ledger'),
      movement: movementAnswer,
      raised: z.array(raisedAnswer),
    }),
    z.strictObject({
      outcome: z.literal('proposed'),
      proposal: shownProposalAnswer,
    }),
  ])
  .meta({ id: 'Reported' });
export type Reported = Answer<typeof reportedAnswer>;

export const outboxAnswersAnswer = wholeList(
  z.discriminatedUnion('outcome', [
    z.strictObject({
      id: z.string(),
      outcome: z.literal('in the ledger'),
      movement: movementAnswer,
      raised: z.array(raisedAnswer),
    }),
    z.strictObject({
      id: z.string(),
      outcome: z.literal('proposed'),
      proposal: shownProposalAnswer,
    }),
    z.strictObject({
      id: z.string(),
      outcome: z.literal('refused'),
      problem: z.strictObject({
        faults: z.array(faultAnswer).exactOptional(),
        type: z.string(),
        title: z.string(),
        status: z.number(),
        detail: z.string(),
        instance: z.string(),
      }),
    }),
  ]),
).meta({ id: 'OutboxAnswers' });
export type OutboxAnswers = Answer<typeof outboxAnswersAnswer>;
