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

const { batches } = scenarioSchema.shape;

// As a scenario document has them, but for the moments: a phone's are to the millisecond.
export const countAnswer: z.ZodType<Count> = scenarioSchema.shape.counts.element.extend({ at: instant });
export const standingDrumAnswer: z.ZodType<Drum> = scenarioSchema.shape.drums.element.extend({
  held: holdAnswer.exactOptional(),
});
// A batch that a report names and nobody has entered stands here too: no base, no density.
export const batchAnswer: z.ZodType<Batch> = batches.element.extend({
  held: holdAnswer.exactOptional(),
  filledAt: z.array(z.string()),
  densityAt15KgPerLitre: z
    .number()
    .describe('0: not known.') as unknown as typeof batches.element.shape.densityAt15KgPerLitre,
});
