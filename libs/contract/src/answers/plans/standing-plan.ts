import { z } from 'zod';
import { type Answer, cents, instant } from '../field.js';
import { moneyParts } from '../planned.js';

export const moneyGapAnswer = z
  .strictObject({
    savedAtMost: cents,
    share: z.number(),
  })
  .meta({
    id: 'MoneyGap',
    description:
      'No plan with no more shortage is cheaper by more than `savedAtMost`, a `share` of its cost in flight, fuel and handling.',
  });

export const standingPlanAnswer = z
  .strictObject({
    id: z.string(),
    number: z.number().describe('How many plans have been accepted, this one included.'),
    asOf: instant.describe("Facts of this moment, by the territory's clock."),
    acceptedByName: z.string(),
    cost: moneyParts,
    moneyGap: moneyGapAnswer.nullable().describe('Null: nothing is proved.'),
    flights: z.number().describe('With drums, that its cost is of; ideas included.'),
    laterIdeas: z
      .number()
      .describe(
        'Of them, those later than the days that it offered, and not over yet: no level counts them.',
      ),
    isAsAccepted: z
      .boolean()
      .describe(
        'The flights that stand are those of the plan, none needs a decision and no surface was heard of since.',
      ),
  })
  .meta({ id: 'StandingPlan', description: 'The plan that was accepted last, as it was found.' });
export type StandingPlan = Answer<typeof standingPlanAnswer>;
