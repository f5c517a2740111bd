import { z } from 'zod';
import { scenarioSchema } from './scenario-schema.js';

const shape = scenarioSchema.shape;

/** What a territory says of itself. Day 1 of a plan is today. */
export const settingsSchema = z.strictObject({
  title: shape.title,
  note: shape.note,
  timeZone: shape.timeZone,
  /** For a demo or a drill: the clock starts here when this is changed, and runs on. Absent: the time of day. */
  clockStartsAt: shape.asOf
    .meta({
      description:
        'For a demo or a drill: the clock starts here when this is changed; absent: the time of day',
      unit: 'UTC',
      examples: ['2027-06-14T06:00Z'],
    })
    .exactOptional(),
  days: shape.days,
  offeredDays: shape.offeredDays,
  currency: shape.currency,
  noFlyingDays: shape.noFlyingDays,
});

export type Settings = z.output<typeof settingsSchema>;
