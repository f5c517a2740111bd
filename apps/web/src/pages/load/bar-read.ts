import { z } from 'zod';
import { surface } from './sheet-read.js';

const limitSchema = z.object({
  name: z.string(),
  place: z.string().nullable(),
  surface: surface.nullable(),
  moment: z.enum(['zero fuel', 'take-off', 'landing']),
  limitLb: z.number(),
  spareLb: z.number(),
  holds: z.boolean(),
  binds: z.boolean(),
});

export type Limit = z.output<typeof limitSchema>;

/** One leg as a bar: what it weighs, and every limit on it. */
export const barSchema = z.object({
  operatingLb: z.number(),
  load: z.array(
    z.object({
      name: z.string(),
      kg: z.number(),
      lb: z.number(),
      isDrum: z.boolean(),
      onHold: z.literal(true).exactOptional(),
    }),
  ),
  fuelOnLandingLb: z.number(),
  tripLb: z.number(),
  limits: z.array(limitSchema),
  forbiddenBy: z.string().nullable(),
  boundByCount: z.object({ name: z.string(), aboard: z.number(), most: z.number() }).nullable(),
  forbiddenWhenSoft: z.string().nullable(),
  drums: z.number(),
  drumPositions: z.number(),
  relax: z.string(),
});

export type Bar = z.output<typeof barSchema>;
