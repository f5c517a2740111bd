import { z } from 'zod';
import { lb } from '../field.js';
import { limitName, surfaceState } from '../words.js';

export const legLimitLineAnswer = z
  .strictObject({
    name: limitName,
    place: z.string().nullable(),
    surface: surfaceState
      .nullable()
      .describe('State of the strip that the limit is for; null: it has nothing to do with a strip.'),
    positions: z.number().nullable().describe('Standing places; null: it is no number of places.'),
    binds: z.boolean(),
    limitLb: lb.nullable().describe('Null: it is no weight.'),
    spareLb: lb.describe(
      'Of the sum in whole pounds that a sheet prints; of what is no weight, the room. Negative: over.',
    ),
  })
  .meta({ id: 'LegLimitLine', description: 'One limit of a leg with the drums of the flight aboard.' });

export const legWithLimitsAnswer = z
  .strictObject({
    from: z.string(),
    to: z.string(),
    surface: surfaceState,
    drumsAboard: z.number(),
    drumsPossible: z.number(),
    limits: z
      .array(legLimitLineAnswer)
      .describe(
        'Tightest first. Where the strip is soft, its dry landing limit is there to compare; where nobody knows its surface, the soft one, if it is the nearest of the weights.',
      ),
  })
  .meta({ id: 'LegWithLimits' });
