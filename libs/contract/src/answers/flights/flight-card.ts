import { z } from 'zod';
import { type Answer, instant, kg } from '../field.js';
import { moneyParts, plannedFlight, surfaceReport } from '../planned.js';
import { faultAnswer, surfaceState } from '../words.js';
import { consequenceAnswer } from './consequence.js';
import { stopAnswer } from './flight.js';
import { legWithLimitsAnswer } from './leg-limits.js';

export const cardLoadAnswer = z
  .strictObject({
    drums: z.number(),
    kg: kg.describe('At the planning weight of a drum.'),
    cost: moneyParts,
  })
  .meta({ id: 'CardLoad' });

export const fewerDrumsAnswer = cardLoadAnswer
  .extend({ stops: z.array(stopAnswer), legs: z.array(legWithLimitsAnswer) })
  .meta({ id: 'FewerDrums', description: '`stops` without a drum: none may go.' });

export const heardAnswer = z
  .strictObject({
    place: z.string(),
    counts: surfaceState,
    report: surfaceReport.nullable(),
    staleAt: instant.nullable(),
    isStale: z.boolean(),
  })
  .meta({
    id: 'Heard',
    description:
      'What is known of the surface of a strip on the way, and what counts on the day of the flight.',
  });

export const whoIsFitAnswer = z
  .strictObject({
    id: z.string(),
    whyNot: z.string().nullable().describe('Null: fit for this flight, hours apart.'),
  })
  .meta({ id: 'WhoIsFit', description: 'A pilot of the operator, and whether a flight is for them.' });

export const flightCardAnswer = z
  .strictObject({
    planned: plannedFlight,
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

export const cardAnswer = z
  .strictObject({
    id: z.string(),
    revision: z.number(),
    asOf: instant,
    planned: plannedFlight.describe('As it was when the flight last changed.'),
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
        kg: z.number().describe('Of all of them.'),
        lbOnLegs: z
          .array(z.number())
          .describe('Aboard on each leg that has drums, the whole pounds of each drum added.'),
      })
      .nullable()
      .describe('What the drums set aside weigh, full; null: not all are named.'),
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
