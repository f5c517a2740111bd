import { z } from 'zod';
import { instant } from '../field.js';
import { drawNotReportedAnswer } from '../projections/cache.js';
import { flightState } from '../words.js';

export const changedAnswer = z
  .strictObject({
    at: instant.describe("When it came in, by the territory's clock."),
    writtenAt: instant.nullable().describe('When it was written down, where that was earlier.'),
    what: z.string(),
    source: z.string().describe('Who, and by which means.'),
  })
  .meta({ id: 'Changed' });

export const notHeardAnswer = z
  .strictObject({
    draws: z.array(drawNotReportedAnswer).describe('Planned draws of days that are over.'),
    caches: z.array(
      z.strictObject({
        place: z.string(),
        countedAt: instant.nullable(),
        why: z.array(z.string()),
      }),
    ),
    phones: z.array(
      z.strictObject({
        person: z.string(),
        hoursSilent: z.number(),
      }),
    ),
    crews: z.array(
      z.strictObject({
        pilot: z.string().nullable(),
        flight: z.string(),
        state: flightState,
        expectedAt: instant.describe('When a word was to come.'),
        what: z.enum(['not loaded', 'not off', 'not back', 'drums not reported']),
      }),
    ),
  })
  .meta({ id: 'NotHeard' });
