import { z } from 'zod';
import { scenarioSchema } from '../scenario/scenario-schema.js';

const { caches, helicopterTasks, slings } = scenarioSchema.shape;
const id = z
  .string()
  .min(1)
  .max(100)
  .meta({ description: 'Name of the thing, as in its own address; a new one where there is none yet' });

/** One change of the territory, asked about before it is made: what it does to the caches. */
export const projectionChangeSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('caches'), id, data: caches.element }),
  z.strictObject({ kind: z.literal('helicopter-tasks'), id, data: helicopterTasks.element.nullable() }),
  z.strictObject({ kind: z.literal('slings'), id, data: slings.element.nullable() }),
]);

/** `data`: null takes the task or the sling out. */
export type ProjectionChange = z.output<typeof projectionChangeSchema>;
