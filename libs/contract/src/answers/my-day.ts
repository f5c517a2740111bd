import type { LoadSheetRequest } from '@drumline/loading';
import { z } from 'zod';
import { scenarioSchema } from '../scenario/scenario-schema.js';
import { type Answer, clockTime, feet, hours, instant, isoDate, kt, lb } from './field.js';
import { balanceMomentAnswer } from './load-parts.js';
import { loadSheetAnswer } from './sheet-parts.js';
import { flightState, surfaceState } from './words.js';

export const surfacePolicyAnswer = z
  .strictObject({
    staleAfterHours: hours,
    expected: surfaceState,
  })
  .meta({
    id: 'SurfacePolicy',
    description: 'How long a surface report stays fresh, and what the planner expects without one.',
  });
export type SurfacePolicy = Answer<typeof surfacePolicyAnswer>;

export const runwayAnswer = z
  .strictObject({
    lengthFt: feet,
    slopePercent: z.number(),
    material: z.string(),
    oneWay: z.boolean(),
    approachFromDeg: z
      .number()
      .describe(
        'True bearing of the side from which a one-way strip is approached: 180 is from the south. Absent: not said.',
      )
      .exactOptional(),
    tailwindLimitKt: kt,
    committalPoint: z
      .string()
      .nullable()
      .describe('Point on the approach after which landing must be completed; null where there is none.'),
  })
  .meta({ id: 'Runway' });
export type Runway = Answer<typeof runwayAnswer>;

export const phonePlaceAnswer = z
  .strictObject({
    drums: z.number(),
    capacityDrums: z.number().nullable().describe('Null: no cache.'),
    kind: z.enum(['base', 'strip', 'pad']),
    code: z.string(),
    surface: surfacePolicyAnswer,
    stripClass: z
      .union([z.literal(1), z.literal(4), z.literal(3), z.literal(2)])
      .nullable()
      .describe('Null at a pad.'),
    name: z.string(),
    elevationFt: feet,
    runway: runwayAnswer.nullable(),
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
    id: z.string(),
    state: flightState,
    version: z.number(),
    needsDecision: z.string().nullable(),
    date: isoDate,
    departs: clockTime,
    aircraft: z.string(),
    route: z.array(z.string()),
    stops: z.array(
      z.strictObject({
        place: z.string(),
        drums: z.array(z.string()),
        drumsIfSoft: z.number().nullable().describe('Null: closed when soft.'),
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
    lastAct: z.string(),
    changedAt: instant,
    changedByName: z.string(),
    reason: z.string().nullable(),
    sheet: loadSheetAnswer.nullable().describe('Null: `why` says why there is none.'),
    request: sheetRequestAnswer
      .nullable()
      .describe(
        'What the sheet is made from: with another drum aboard the phone makes it anew. Null: there is no sheet.',
      ),
    why: z.string().nullable(),
    balance: z.array(balanceMomentAnswer).describe('Where the weight lies on each leg.'),
  })
  .meta({ id: 'PhoneFlight' });
export type PhoneFlight = Answer<typeof phoneFlightAnswer>;

export const myDayAnswer = z
  .strictObject({
    format: z
      .literal('my-day/1')
      .describe('A phone that was away through a change of the program reads this first.'),
    at: instant.describe("By the territory's clock."),
    serverAt: instant.describe("By the server's own clock: a demo's territory has another day."),
    timeZone: z.string(),
    today: isoDate,
    crew: z.string().nullable(),
    places: z.array(phonePlaceAnswer),
    surfaceReports: z.array(scenarioSchema.shape.surfaceReports.element),
    drums: z.array(phoneDrumAnswer).describe('Every drum of the book, where it is, and why it is held.'),
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
