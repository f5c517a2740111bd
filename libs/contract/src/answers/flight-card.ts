import { z } from 'zod';
import { moneyParts } from '../plan/field.js';
import { plannedFlightSchema } from '../plan/planned-flight-schema.js';
import { scenarioSchema } from '../scenario/scenario-schema.js';
import { type Answer, instant, kg, lb } from './field.js';
import { consequenceAnswer } from './flights.js';
import { faultAnswer, limitName, surfaceState } from './words.js';

export const cardLoadAnswer = z
  .strictObject({
    drums: z.number(),
    kg: kg.describe('At the planning weight of a drum.'),
    cost: moneyParts,
  })
  .meta({ id: 'CardLoad' });
export type CardLoad = Answer<typeof cardLoadAnswer>;

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
export type LegLimitLine = Answer<typeof legLimitLineAnswer>;

export const legWithLimitsAnswer = z
  .strictObject({
    from: z.string(),
    to: z.string(),
    surface: surfaceState,
    drumsAboard: z.number(),
    drumsPossible: z.number(),
    limits: z
      .array(legLimitLineAnswer)
      .describe('Tightest first; where the strip is soft, its dry landing limit is there to compare.'),
  })
  .meta({ id: 'LegWithLimits' });
export type LegWithLimits = Answer<typeof legWithLimitsAnswer>;

export const fewerDrumsAnswer = z
  .strictObject({
    stops: z.array(
      z.strictObject({
        place: z.string(),
        drums: z.number(),
      }),
    ),
    legs: z.array(legWithLimitsAnswer),
    drums: z.number(),
    kg: kg.describe('At the planning weight of a drum.'),
    cost: moneyParts,
  })
  .meta({ id: 'FewerDrums', description: '`stops` without a drum: none may go.' });
export type FewerDrums = Answer<typeof fewerDrumsAnswer>;

export const heardAnswer = z
  .strictObject({
    place: z.string(),
    counts: surfaceState,
    report: scenarioSchema.shape.surfaceReports.element.nullable(),
    staleAt: instant.nullable(),
    isStale: z.boolean(),
  })
  .meta({
    id: 'Heard',
    description:
      'What is known of the surface of a strip on the way, and what counts on the day of the flight.',
  });
export type Heard = Answer<typeof heardAnswer>;

export const whoIsFitAnswer = z
  .strictObject({
    id: z.string(),
    whyNot: z.string().nullable().describe('Null: fit for this flight, hours apart.'),
  })
  .meta({ id: 'WhoIsFit', description: 'A pilot of the operator, and whether a flight is for them.' });
export type WhoIsFit = Answer<typeof whoIsFitAnswer>;

export const flightCardAnswer = z
  .strictObject({
    planned: plannedFlightSchema,
    closed: z.string().nullable().describe('Why it cannot be flown on its day at all; null: it can.'),
    load: cardLoadAnswer,
    legs: z.array(legWithLimitsAnswer),
    fewer: fewerDrumsAnswer.nullable().describe('As many of its drums as may go; null: all may.'),
    heard: z.array(heardAnswer),
    crew: z.array(whoIsFitAnswer),
    classes: z.array(
      z.strictObject({
        place: z.string(),
        stripClass: z.number(),
      }),
    ),
  })
  .meta({
    id: 'FlightCard',
    description: 'What somebody decides a flight by, all of it by the facts of today.',
  });
export type FlightCard = Answer<typeof flightCardAnswer>;

export const cardAnswer = z
  .strictObject({
    id: z.string(),
    revision: z.number(),
    asOf: instant,
    planned: plannedFlightSchema.describe('As it was when the flight last changed.'),
    reason: z.string().nullable(),
    drumNumbers: z
      .array(
        z.strictObject({
          place: z.string(),
          drum: z.string().nullable(),
        }),
      )
      .describe('Numbers of the drums set aside; null: still to be filled.'),
    weighed: z
      .strictObject({
        kg: z.number(),
        lb: z.number(),
      })
      .nullable()
      .describe(
        'What the drums set aside weigh together, full: kg, and the whole pounds of each added; null: not all are named.',
      ),
    today: flightCardAnswer
      .nullable()
      .describe("By today's facts; null: its day is over, or it is no part of a plan any more."),
    faults: z
      .array(faultAnswer)
      .describe("What stands in the way of flying it as it stands, by today's facts."),
    ifDeclined: consequenceAnswer.nullable(),
  })
  .meta({
    id: 'CardAnswer',
    description: 'Answer of GET /api/flights/:id/card: all that one flight is decided by.',
  });
export type CardAnswer = Answer<typeof cardAnswer>;
