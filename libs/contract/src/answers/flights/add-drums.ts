import { z } from 'zod';
import { type Answer, isoDate } from '../field.js';
import { faultAnswer } from '../words.js';

export const addDrumsAnswer = z
  .strictObject({
    faults: z.array(faultAnswer),
    instead: z.array(
      z.strictObject({
        flight: z.string(),
        date: isoDate,
        from: z.string(),
        to: z.string(),
        drums: z.number(),
        words: z.string(),
      }),
    ),
  })
  .meta({
    id: 'AddDrumsAnswer',
    description:
      'Answer of POST /api/booked-flights/:id/drums/check: what stands in the way, and which legs could take drums.',
  });
export type AddDrumsAnswer = Answer<typeof addDrumsAnswer>;
