import { z } from 'zod';
import { type Answer, centimetres, kgPerLitre, litres } from '../field.js';
import { helicopterTask, slingMove } from '../planned.js';
import { phoneClock, phoneFormat } from './phone-clock.js';
import { stockOutlookAnswer } from './stock-outlook.js';

/** What every table of litres by the stick says. */
const stick = {
  name: z.string(),
  stickMarksCm: centimetres.describe(
    'From mark to mark on the stick: a reading is out by half of it, either way.',
  ),
  reference: z.string(),
};

export const dipTableAnswer = z.discriminatedUnion('kind', [
  z.strictObject({
    ...stick,
    kind: z.literal('upright drum'),
    innerDiameterCm: centimetres,
    innerHeightCm: centimetres,
  }),
  z.strictObject({
    ...stick,
    kind: z.literal('lying drum'),
    innerDiameterCm: centimetres,
    innerLengthCm: centimetres,
  }),
  z.strictObject({
    ...stick,
    kind: z.literal('own table'),
    rows: z.array(z.strictObject({ dipCm: centimetres, litres })),
  }),
]);

export const myPlacesAnswer = z
  .strictObject({
    format: phoneFormat('my-places/1'),
    ...phoneClock,
    helicopter: z
      .strictObject({
        id: z.string(),
        name: z.string(),
        drumsPerLift: z.number(),
      })
      .nullable()
      .describe('Null: this person is no crew of a helicopter of the territory.'),
    tasks: z.array(helicopterTask).describe("This helicopter's, from today on."),
    slings: z.array(slingMove),
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
      .array(dipTableAnswer)
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
