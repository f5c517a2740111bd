import { z } from 'zod';
import { type Answer, clockTime, isoDate, kg, litres } from '../field.js';
import { drumContent, drumWhere } from './drum.js';

/** A flight whose drums somebody gets ready. */
const flightToLoad = {
  flight: z.string(),
  version: z.number(),
  state: z.enum(['approved', 'given']),
  needsDecision: z.string().nullable(),
  date: isoDate,
  departs: clockTime,
  aircraft: z.string(),
  pilot: z.string().nullable(),
  from: z.string(),
};

export const fillListAnswer = z
  .strictObject({
    place: z.string(),
    drums: z.number(),
    litres: litres,
    bulkLitres: litres,
    emptiesFitForUse: z.number(),
    fillDrumsPerDay: z.number(),
    batches: z
      .array(
        z.strictObject({
          id: z.string(),
          filledOn: isoDate,
          retestDue: isoDate,
        }),
      )
      .describe('Batches filled there that are fit throughout, the newest first.'),
    lines: z.array(
      z.strictObject({
        ...flightToLoad,
        to: z.string(),
        drums: z.number(),
        fillBy: isoDate.describe('A drum filled on a day flies from the next.'),
        plannedUse: isoDate,
      }),
    ),
    short: z.array(z.string()).describe('What falls short, each a sentence.'),
  })
  .meta({
    id: 'FillListAnswer',
    description: 'Answer of GET /api/fill-lists, a base each: what is to be filled there, and from what.',
  });
export type FillListAnswer = Answer<typeof fillListAnswer>;

export const pickedDrumAnswer = z
  .strictObject({
    number: z.string(),
    where: drumWhere,
    batch: z.string().nullable(),
    content: drumContent,
    litres: litres,
    grossKg: kg.nullable(),
    retestDue: isoDate.nullable(),
    against: z
      .array(z.string())
      .describe('Why it is not to be taken after all, each a sentence; empty: take it.'),
  })
  .meta({ id: 'PickedDrum' });
export type PickedDrum = Answer<typeof pickedDrumAnswer>;

export const pickListAnswer = z
  .strictObject({
    ...flightToLoad,
    stops: z.array(
      z.strictObject({
        place: z.string(),
        plannedUse: isoDate.describe('When the plan burns the drums: they are to be fit until then.'),
        drums: z.array(pickedDrumAnswer),
        toFill: z.number().describe('Drums that nobody has filled yet.'),
      }),
    ),
  })
  .meta({
    id: 'PickListAnswer',
    description:
      'Answer of GET /api/pick-lists, a flight each, by date: the drums set aside for it, in the order of its stops.',
  });
export type PickListAnswer = Answer<typeof pickListAnswer>;

export const retestComingAnswer = z
  .strictObject({
    number: z.string(),
    place: z.string(),
    batch: z.string(),
    content: drumContent,
    litres: litres,
    retestDue: isoDate,
    isPast: z.boolean(),
    unusedLitres: litres.describe('Litres that the plan would not have burned by then.'),
    drawTooLate: z
      .strictObject({
        date: isoDate,
        for: z.string(),
      })
      .nullable()
      .describe('The first draw that would find it past retest; null: none in the days ahead.'),
    flight: z.string().nullable().describe('The flight that it is set aside for.'),
  })
  .meta({
    id: 'RetestComingAnswer',
    description:
      'Answer of GET /api/retest-coming: a drum whose retest date comes within the days looked ahead, or is over.',
  });
export type RetestComingAnswer = Answer<typeof retestComingAnswer>;
