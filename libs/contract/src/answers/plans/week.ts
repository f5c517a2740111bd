import { z } from 'zod';
import { scenarioSchema } from '../../scenario/scenario-schema.js';
import { type Answer, clockTime, hours, instant, isoDate } from '../field.js';
import { bookedNeedsDecision, flightInShort, flightLastDone } from '../flights/flight-in-short.js';
import { baseUse, moneyParts, surfaceReport } from '../planned.js';
import { flightKind, limitName } from '../words.js';
import { standingPlanAnswer } from './standing-plan.js';

export const weekFlightAnswer = z
  .strictObject({
    ...flightInShort,
    ...flightLastDone,
    kind: flightKind,
    revision: z.number(),
    heldInPlace: z.boolean(),
    unheard: z.boolean().describe('Its day is over, and nobody has said that it flew.'),
    pilot: z.string().nullable(),
    route: z.array(z.string()).describe('Places from base to base.'),
    drums: z.number(),
    drumsPossible: z.number(),
    binding: z
      .strictObject({
        place: z
          .string()
          .nullable()
          .describe('Place the limit belongs to; null for a limit of the aeroplane itself.'),
        name: limitName,
      })
      .nullable()
      .describe('Of the leg with the least room; null: no drum is aboard.'),
  })
  .meta({ id: 'WeekFlight', description: 'A flight as its box shows it.' });
export type WeekFlight = Answer<typeof weekFlightAnswer>;

export const weekBookedAnswer = z
  .strictObject({
    departs: clockTime.nullable().describe('Null: the hour is not set.'),
    heldHours: hours.describe('Aircraft time taken out of the day, turn-rounds included.'),
    route: z.array(z.string()),
    passengers: z.number(),
    spareDrums: z.number().nullable().describe('Null: the day is over, or not looked ahead to.'),
    needsDecision: bookedNeedsDecision,
    date: isoDate,
    id: z.string(),
    aircraft: z.string(),
    purpose: z.string(),
  })
  .meta({ id: 'WeekBooked', description: 'A flight that flies anyway, no drum on it yet.' });
export type WeekBooked = Answer<typeof weekBookedAnswer>;

export const weekLandingAnswer = z
  .strictObject({
    date: isoDate,
    place: z.string(),
    drums: z.number(),
    limitDrums: z.number().nullable().describe('What can be unloaded there in a day; null: no limit.'),
  })
  .meta({ id: 'WeekLanding' });
export type WeekLanding = Answer<typeof weekLandingAnswer>;

export const shortByAnswer = z
  .strictObject({
    litreDays: z.number(),
    first: z
      .strictObject({
        place: z.string(),
        date: isoDate,
      })
      .nullable()
      .describe('The first day and the cache that is shortest then; null: nothing is short.'),
  })
  .meta({
    id: 'ShortBy',
    description: 'Litres missing, a day each: 25 L short for two days are 50 litre-days.',
  });

export const weekTallyAnswer = z
  .strictObject({
    belowCritical: shortByAnswer,
    belowMinimum: shortByAnswer,
    drums: z.number(),
    expectedDrums: z
      .number()
      .describe("Drums that land on average, by the weather odds of each flight's half day."),
    bases: z.array(baseUse),
  })
  .meta({ id: 'WeekTally', description: 'What lies ahead with every flight that stands flown.' });

export const weekAnswer = z
  .strictObject({
    asOf: instant,
    today: isoDate,
    days: z.array(
      z.strictObject({
        date: isoDate,
        noFlying: z.boolean(),
      }),
    ),
    aircraft: z.array(scenarioSchema.shape.aircraft.element),
    caches: z.array(z.string()).describe('Places that drums may be flown to.'),
    flights: z.array(weekFlightAnswer),
    booked: z.array(weekBookedAnswer),
    landings: z.array(weekLandingAnswer).describe('Drums that standing flights land, by day and place.'),
    cost: moneyParts.describe('Of every flight that stands from the first of the days on, as planned.'),
    flightsCosted: z.number(),
    tally: weekTallyAnswer.describe('From today on.'),
    lastDay: isoDate.describe('Of the days for which flights are offered, and shortage is counted.'),
    plan: standingPlanAnswer.nullable().describe('The plan that was accepted last; null: none was.'),
    stripLimitsFrom: z
      .array(z.string())
      .describe('What the strip limits in force were taken from: table and revision, the most used first.'),
    heardSince: z
      .array(surfaceReport)
      .describe(
        'Reports by which the surface of a day ahead is another than the plan was made on; an outranked one is none.',
      ),
    stockIsBehind: z
      .boolean()
      .describe(
        'Stock has moved in the last seconds, and tally and spare drums are not of it yet: worth asking again soon.',
      ),
  })
  .meta({
    id: 'WeekAnswer',
    description: 'Answer of GET /api/week: the board of some days, and what its flights add up to.',
  });
export type WeekAnswer = Answer<typeof weekAnswer>;
