import type { LoadSheetRequest } from '@drumline/loading';
import { z } from 'zod';
import { placeSchema } from '../../scenario/place-schema.js';
import { type Answer, clockTime, feet, instant, lb } from '../field.js';
import { flightInShort, flightLastDone } from '../flights/flight-in-short.js';
import { loadSheetAnswer } from '../loads/load-sheet.js';
import { surfaceReport } from '../planned.js';
import { phoneClock, phoneFormat } from './phone-clock.js';

/** As the territory has them. */
const { surface, runway } = placeSchema.shape;

export const phonePlaceAnswer = z
  .strictObject({
    drums: z.number(),
    capacityDrums: z.number().nullable().describe('Null: no cache.'),
    kind: z.enum(['base', 'strip', 'pad']),
    code: z.string(),
    surface,
    stripClass: z
      .union([z.literal(1), z.literal(4), z.literal(3), z.literal(2)])
      .nullable()
      .describe('Null at a pad.'),
    name: z.string(),
    elevationFt: feet,
    runway: runway.unwrap().nullable(),
    landingCapacityDrumsPerDay: z
      .number()
      .nullable()
      .describe('Drums that can be unloaded there in a day with the hands present; null: no limit.'),
    helper: z.string().describe('Who helps with drums there, and when; free text.').exactOptional(),
    radioTime: clockTime.describe('Local time of the daily radio call.').exactOptional(),
    remarks: z.string().exactOptional(),
  })
  .meta({ id: 'PhonePlace' });
export type PhonePlace = Answer<typeof phonePlaceAnswer>;

export const phoneDrumAnswer = z
  .strictObject({
    number: z.string(),
    place: z.string(),
    batch: z.string(),
    kg: z.number(),
    tareKg: z.number(),
    litres: z.number(),
    held: z.string().nullable().describe('Null: not held.'),
  })
  .meta({ id: 'PhoneDrum' });
export type PhoneDrum = Answer<typeof phoneDrumAnswer>;

/** What another person said of the same drum, on the same leg. */
export const sameReportAnswer = z
  .strictObject({
    movement: z.string().describe("Id of this person's movement."),
    by: z.string(),
    writtenAt: instant,
  })
  .meta({
    id: 'SameReport',
    description: 'A report of somebody else that says what one of this person says.',
  });
export type SameReport = Answer<typeof sameReportAnswer>;

/** As the maker of sheets takes it: nobody else reads it. */
const sheetRequestAnswer = z.looseObject({}) as unknown as z.ZodType<LoadSheetRequest>;

export const phoneFlightAnswer = z
  .strictObject({
    ...flightInShort,
    ...flightLastDone,
    stops: z.array(
      z.strictObject({
        place: z.string(),
        drums: z.array(z.string()),
        drumsIfSoft: z
          .number()
          .nullable()
          .describe('Null: closed when soft, or too heavy then with the drums for other stops alone.'),
        planned: z
          .strictObject({
            arrivalLb: lb,
            overLb: lb,
          })
          .nullable()
          .describe(
            'Take-off limit on arrival with every drum at its planning weight: over it, unload or stay.',
          ),
      }),
    ),
    reason: z.string().nullable(),
    sheet: loadSheetAnswer.nullable().describe('Null: `why` says why there is none.'),
    request: sheetRequestAnswer
      .nullable()
      .describe(
        'What the sheet is made from: with another drum aboard the phone makes it anew. Null: there is no sheet.',
      ),
    why: z.string().nullable(),
  })
  .meta({ id: 'PhoneFlight' });
export type PhoneFlight = Answer<typeof phoneFlightAnswer>;

export const myDayAnswer = z
  .strictObject({
    format: phoneFormat('my-day/1'),
    ...phoneClock,
    crew: z.string().nullable(),
    places: z.array(phonePlaceAnswer),
    surfaceReports: z.array(surfaceReport),
    drums: z.array(phoneDrumAnswer).describe('Every drum of the book, where it is, and why it is held.'),
    brimLitres: z.number().describe('What a drum holds to the brim.'),
    sameReports: z
      .array(sameReportAnswer)
      .describe('Reports of this person that somebody else has made too: they count once.'),
    flights: z
      .array(phoneFlightAnswer)
      .describe('With this crew, by day and time: given, under way, or not reported yet.'),
  })
  .meta({
    id: 'MyDay',
    description:
      "Answer of GET /api/my-day: everything that a crew's phone needs while it has no line. The sheets have their totals in them; the phone hides them until two others are typed.",
  });
export type MyDay = Answer<typeof myDayAnswer>;
