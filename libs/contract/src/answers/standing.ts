import { z } from 'zod';
import { scenarioSchema } from '../scenario/scenario-schema.js';
import { type Answer, instant } from './field.js';

export const holdAnswer = z
  .strictObject({
    reason: z.string(),
    by: z.string(),
    at: instant,
  })
  .meta({ id: 'Hold' });
export type Hold = Answer<typeof holdAnswer>;

// As a scenario document has them, but for the moments: a phone's are to the millisecond.
export const countAnswer = scenarioSchema.shape.counts.element.extend({ at: instant });
export const standingDrumAnswer = scenarioSchema.shape.drums.element.extend({
  held: holdAnswer.exactOptional(),
});
export const batchAnswer = scenarioSchema.shape.batches.element.extend({ held: holdAnswer.exactOptional() });
