import { z } from 'zod';
import { moneyParts } from '../plan/field.js';
import { baseUse } from '../plan/flight-plan-schema.js';
import { scenarioSchema } from '../scenario/scenario-schema.js';
import { type Answer, cents, clockTime, instant, isoDate } from './field.js';
import { flightState, limitName } from './words.js';

export const weekFlightAnswer = z
  .strictObject({
    id: z.string(),
    kind: z.enum(['positioning', 'booked']),
    state: flightState,
    version: z.number(),
    revision: z.number(),
    needsDecision: z.string().nullable(),
    heldInPlace: z.boolean(),
    date: isoDate,
    departs: clockTime,
    aircraft: z.string(),
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
    lastAct: z.string(),
    changedAt: instant,
    changedByName: z.string(),
  })
  .meta({ id: 'WeekFlight', description: 'A flight as its box shows it.' });
export type WeekFlight = Answer<typeof weekFlightAnswer>;

export const weekBookedAnswer = z
  .strictObject({
    departs: clockTime.nullable(),
    route: z.array(z.string()),
    passengers: z.number(),
    spareDrums: z.number().nullable().describe('Null: the day is over, or not looked ahead to.'),
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
export type ShortBy = Answer<typeof shortByAnswer>;

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
export type WeekTally = Answer<typeof weekTallyAnswer>;

export const moneyGapAnswer = z
  .strictObject({
    savedAtMost: cents,
    share: z.number(),
  })
  .meta({
    id: 'MoneyGap',
    description:
      'No plan with no more shortage is cheaper by more than `savedAtMost`, a `share` of what this one costs all told.',
  });
export type MoneyGap = Answer<typeof moneyGapAnswer>;

export const standingPlanAnswer = z
  .strictObject({
    id: z.string(),
    number: z.number().describe('How many plans have been accepted, this one included.'),
    asOf: instant.describe("Facts of this moment, by the territory's clock."),
    acceptedByName: z.string(),
    cost: moneyParts,
    moneyGap: moneyGapAnswer.nullable().describe('Null: nothing is proved.'),
    flights: z.number().describe('With drums, that its cost is of; ideas included.'),
    laterIdeas: z
      .number()
      .describe(
        'Of them, those later than the days that it offered, and not over yet: no level counts them.',
      ),
    isAsAccepted: z
      .boolean()
      .describe(
        'The flights that stand are those of the plan, none needs a decision and no surface was heard of since.',
      ),
  })
  .meta({ id: 'StandingPlan', description: 'The plan that was accepted last, as it was found.' });
export type StandingPlan = Answer<typeof standingPlanAnswer>;

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
      .array(scenarioSchema.shape.surfaceReports.element)
      .describe('Reports of surfaces that came after the facts of that plan.'),
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
