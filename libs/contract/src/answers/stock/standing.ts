import type { Batch, Count, Drum } from '@drumline/stock';
import { z } from 'zod';
import { scenarioSchema } from '../../scenario/scenario-schema.js';
import { instant } from '../field.js';

export const holdAnswer = z
  .strictObject({
    reason: z.string(),
    by: z.string(),
    at: instant,
  })
  .meta({ id: 'DrumHold' });

// As a scenario document has them, but for the moments: a phone's are to the millisecond.
export const countAnswer: z.ZodType<Count> = scenarioSchema.shape.counts.element.extend({ at: instant });
export const standingDrumAnswer: z.ZodType<Drum> = scenarioSchema.shape.drums.element.extend({
  held: holdAnswer.exactOptional(),
});
export const batchAnswer: z.ZodType<Batch> = scenarioSchema.shape.batches.element.extend({
  held: holdAnswer.exactOptional(),
});
