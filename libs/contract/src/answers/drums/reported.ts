import { z } from 'zod';
import { wholeList } from '../field.js';
import { shownProposalAnswer } from '../people/proposals.js';
import { faultAnswer } from '../words.js';
import { movementAnswer } from './movement.js';
import { raisedAnswer } from './raised.js';

export const enteredMovementAnswer = z
  .strictObject({
    entry: z.number().describe('Its place in the order of arrival.'),
    movement: movementAnswer,
  })
  .meta({ id: 'EnteredMovement' });

export const inTheLedger = z.strictObject({
  outcome: z.literal('in the ledger'),
  movement: movementAnswer,
  raised: z.array(raisedAnswer),
});

export const proposedMovement = z.strictObject({
  outcome: z.literal('proposed'),
  proposal: shownProposalAnswer,
});

export const reportedAnswer = z
  .discriminatedUnion('outcome', [inTheLedger, proposedMovement])
  .meta({ id: 'Reported' });

export const outboxAnswersAnswer = wholeList(
  z.discriminatedUnion('outcome', [
    inTheLedger.extend({ id: z.string() }),
    proposedMovement.extend({ id: z.string() }),
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
