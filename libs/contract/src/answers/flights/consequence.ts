import { z } from 'zod';
import { type Answer, isoDate, litres } from '../field.js';
import { protectedCache } from './flight-in-short.js';

export const consequenceLevelsAnswer = z
  .strictObject({
    lowestLitres: z.number(),
    endLitres: z.number(),
    belowMinimum: isoDate.nullable().describe('First day that ends below; null: none.'),
    belowCritical: isoDate.nullable(),
  })
  .meta({ id: 'ConsequenceLevels' });

export const consequenceAnswer = z
  .strictObject({
    flight: z.string(),
    ifDeclined: z.string(),
    protects: protectedCache.nullable(),
    caches: z
      .array(
        z.strictObject({
          place: z.string(),
          minimumLitres: litres,
          criticalLitres: litres,
          withIt: consequenceLevelsAnswer,
          without: consequenceLevelsAnswer,
        }),
      )
      .describe('Each cache that would hold less, with the flight and without it.'),
  })
  .meta({ id: 'ConsequenceAnswer' });
export type ConsequenceAnswer = Answer<typeof consequenceAnswer>;
