import { z } from 'zod';
import { type Answer, instant } from '../field.js';

/** How the clock of the territory was set: a moment of the server's own clock is read by the last setting before it. */
export const clockAnswer = z
  .strictObject({
    settings: z
      .array(
        z.strictObject({
          setAt: instant.describe("By the server's own clock."),
          startsAt: instant.nullable().describe('What it said then; null: from then on the time of day.'),
        }),
      )
      .describe('The first one first; none: it is the time of day.'),
    timeZone: z.string().describe('By which days and times are read; UTC until somebody has set it.'),
  })
  .meta({ id: 'Clock' });
export type ClockAnswer = Answer<typeof clockAnswer>;
