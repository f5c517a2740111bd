import { z } from 'zod';
import { type Answer, isoDate } from '../field.js';
import { plannedLoadAnswer } from '../loads/load.js';
import { moneyParts } from '../planned.js';
import { faultAnswer } from '../words.js';
import { consequenceAnswer } from './consequence.js';

const mostDrums = {
  drums: z.number().describe('The most that may be aboard.'),
  by: z.string().describe('What keeps a further drum off, in words.'),
};

export const bookedLoadAnswer = z
  .strictObject({
    asked: z
      .strictObject({
        place: z.string().describe('Where they would come off.'),
        drums: z.number(),
      })
      .describe('As asked; else the landing that takes most, and as many as it takes.'),
    planned: plannedLoadAnswer
      .nullable()
      .describe('With them aboard, beside what is booked; null: see `why`.'),
    drawn: z.number().describe('Drums in the picture: fewer than asked where so many stand nowhere aboard.'),
    why: z.string().nullable().describe('Why there is no picture.'),
    planningKg: z.number(),
    notKnown: z.array(z.string()).describe('What these weights rest on and nobody has entered or weighed.'),
    legs: z.array(z.strictObject({ from: z.string(), to: z.string(), ...mostDrums })),
    landings: z
      .array(z.strictObject({ place: z.string(), ...mostDrums }))
      .describe(
        'Landings before its last: what the legs up to it, its strip, its site and the crews let come.',
      ),
    stand: z
      .strictObject({
        base: z.string(),
        free: z.number().describe('Filled, fit at planned use, spoken for by no flight.'),
        take: z.array(z.string()).describe('Of them the oldest, as many as asked.'),
        toFill: z.number(),
      })
      .describe('Drums at the base it comes from.'),
    cost: moneyParts.nullable().describe('Null: nothing is asked, or it is refused.'),
    caches: consequenceAnswer.shape.caches.describe('Each cache that would hold more.'),
    faults: z.array(faultAnswer).describe('What stands in the way.'),
    instead: z
      .array(
        z.strictObject({
          flight: z.string(),
          date: isoDate,
          from: z.string(),
          to: z.string(),
          drums: z.number(),
          words: z.string(),
        }),
      )
      .describe('Other booked flights that could take some.'),
  })
  .meta({
    id: 'BookedLoadAnswer',
    description:
      'Answer of GET /api/booked-flights/:id/load: what a flight that flies anyway carries, which drums it could take, and what follows.',
  });
export type BookedLoadAnswer = Answer<typeof bookedLoadAnswer>;
