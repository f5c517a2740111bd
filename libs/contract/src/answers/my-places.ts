import { z } from 'zod';
import { scenarioSchema } from '../scenario/scenario-schema.js';
import { type Answer, centimetres, instant, isoDate, kgPerLitre, litres, nm } from './field.js';
import { batchAnswer, countAnswer, standingDrumAnswer } from './standing.js';

export const countToleranceAnswer = z
  .strictObject({
    percentOfBook: z.number(),
    litresPerOpenDrum: litres,
    reference: z.string(),
  })
  .meta({
    id: 'CountTolerance',
    description: 'Difference between book and count accepted without a case: the greater of the two.',
  });
export type CountTolerance = Answer<typeof countToleranceAnswer>;

export const stockPictureAnswer = z
  .strictObject({
    asOf: instant.describe('Counts made later are not known yet.'),
    drums: z.array(standingDrumAnswer),
    batches: z.array(batchAnswer),
    counts: z.array(countAnswer),
    countTolerance: countToleranceAnswer,
  })
  .meta({ id: 'StockPicture', description: 'What is known of the drums at one moment.' });
export type StockPicture = Answer<typeof stockPictureAnswer>;

export const drawAnswer = z
  .strictObject({
    date: isoDate,
    place: z.string(),
    litres: litres,
    for: z.string(),
  })
  .meta({
    id: 'Draw',
    description:
      "Fuel leaving a cache by plan: helicopter programme, planned uplift, or the sling's own fuel.",
  });
export type Draw = Answer<typeof drawAnswer>;

export const landingAnswer = z
  .strictObject({
    date: isoDate,
    place: z.string(),
    litres: litres,
    retestDue: isoDate.nullable().describe('Null: filled fresh, fit throughout the plan.'),
  })
  .meta({ id: 'Landing', description: 'Full drums set down at a place by an aeroplane.' });
export type Landing = Answer<typeof landingAnswer>;

export const drumMoveAnswer = z
  .strictObject({
    date: isoDate,
    from: z.string(),
    to: z.string(),
    drums: z.number(),
    /** Of a sling of the territory, which comes whole. */
    helicopter: z.string().exactOptional(),
    distanceNm: nm.exactOptional(),
  })
  .meta({ id: 'DrumMove', description: 'Sealed drums carried from one place to another on a day.' });
export type DrumMove = Answer<typeof drumMoveAnswer>;

export const stockOutlookAnswer = z
  .strictObject({
    picture: stockPictureAnswer,
    caches: z.array(scenarioSchema.shape.caches.element),
    dates: z.array(isoDate).describe('The days of the plan, in order; at least one.'),
    fillLitres: litres.describe('Litres in a full drum.'),
    draws: z.array(drawAnswer),
    landings: z.array(landingAnswer),
    slings: z.array(drumMoveAnswer),
  })
  .meta({
    id: 'StockOutlook',
    description:
      'Stock today and everything that is known to move it. Draws, landings and slings on other dates are left out.',
  });
export type StockOutlook = Answer<typeof stockOutlookAnswer>;

export const myPlacesAnswer = z
  .strictObject({
    format: z
      .literal('my-places/1')
      .describe('A phone that was away through a change of the program reads this first.'),
    at: instant.describe("By the territory's clock."),
    serverAt: instant.describe("By the server's own clock: a demo's territory has another day."),
    timeZone: z.string(),
    today: isoDate,
    helicopter: z
      .strictObject({
        id: z.string(),
        name: z.string(),
        drumsPerLift: z.number(),
      })
      .nullable()
      .describe('Null: this person is no crew of a helicopter of the territory.'),
    tasks: z
      .array(scenarioSchema.shape.helicopterTasks.element)
      .describe("This helicopter's, from today on."),
    slings: z.array(scenarioSchema.shape.slings.element),
    programmes: z
      .array(
        z.strictObject({
          code: z.string(),
          name: z.string(),
          isRecharged: z.boolean(),
        }),
      )
      .describe("`isRecharged`: to a customer; the operator's own are not."),
    places: z.array(
      z.strictObject({
        code: z.string(),
        name: z.string(),
      }),
    ),
    outlook: stockOutlookAnswer.describe(
      'Every cache, with the flights that somebody has approved, and what is left to draw of each day.',
    ),
    dipTables: z
      .array(
        z.discriminatedUnion('kind', [
          z.strictObject({
            name: z.string(),
            stickMarksCm: centimetres.describe(
              'From mark to mark on the stick: a reading is out by half of it, either way.',
            ),
            reference: z.string(),
            kind: z.literal('upright drum'),
            innerDiameterCm: centimetres,
            innerHeightCm: centimetres,
          }),
          z.strictObject({
            name: z.string(),
            stickMarksCm: centimetres.describe(
              'From mark to mark on the stick: a reading is out by half of it, either way.',
            ),
            reference: z.string(),
            kind: z.literal('lying drum'),
            innerDiameterCm: centimetres,
            innerLengthCm: centimetres,
          }),
          z.strictObject({
            name: z.string(),
            stickMarksCm: centimetres.describe(
              'From mark to mark on the stick: a reading is out by half of it, either way.',
            ),
            reference: z.string(),
            kind: z.literal('own table'),
            rows: z.array(
              z.strictObject({
                dipCm: centimetres,
                litres: litres,
              }),
            ),
          }),
        ]),
      )
      .describe(
        'Litres by the stick, the usual one first; absent from a phone that was told before there were any.',
      )
      .exactOptional(),
    bookDensityKgPerLitre: kgPerLitre,
    known: z
      .array(z.string())
      .describe('Ids of what this person has reported in the last days: the outlook has them in it.'),
  })
  .meta({
    id: 'MyPlaces',
    description:
      "Answer of GET /api/my-places: everything that a helicopter crew's phone needs at a cache while it has no line. From the outlook and its own reports the phone works out the stock and where it leads by the same rules as the server.",
  });
export type MyPlaces = Answer<typeof myPlacesAnswer>;
