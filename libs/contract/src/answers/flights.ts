import { z } from 'zod';
import { plannedFlightSchema } from '../plan/planned-flight-schema.js';
import { type Answer, cents, clockTime, hours, instant, isoDate, litres } from './field.js';
import { faultAnswer, flightState, shortLevel } from './words.js';

export const stopAnswer = z
  .strictObject({
    place: z.string(),
    drums: z.number(),
  })
  .meta({ id: 'Stop' });
export type Stop = Answer<typeof stopAnswer>;

export const holdMarkAnswer = z
  .strictObject({
    why: z.string(),
    besides: z.string().nullable().describe('What else the flight needed a decision for.'),
  })
  .meta({ id: 'HoldMark' });
export type HoldMark = Answer<typeof holdMarkAnswer>;

export const flightAnswer = z
  .strictObject({
    id: z.string().describe('"F012"; a booked flight that carries drums has the number of its booking.'),
    kind: z.enum(['positioning', 'booked']),
    state: flightState,
    version: z.number().describe('As printed on the sheet: raised where what is flown changes.'),
    revision: z.number().describe('Raised with every change: the ETag.'),
    needsDecision: z.string().nullable(),
    heldInPlace: z.boolean().describe('Offered, and not to be moved by a re-plan.'),
    planId: z.string().nullable().describe('Null: a person put drums on a booked flight.'),
    date: isoDate,
    departs: clockTime,
    aircraft: z.string(),
    pilot: z.string().nullable(),
    fromPlace: z.string(),
    toPlace: z.string(),
    stops: z.array(stopAnswer),
    planned: plannedFlightSchema.describe(
      'As the planner read it when it last changed: legs, limits, reason, cost.',
    ),
    offAt: instant.nullable().describe('As reported: off, and down again.'),
    landedAt: instant.nullable(),
    closing: z
      .strictObject({
        blockHours: hours,
        flightCost: cents,
        fuelCost: cents,
        handlingCost: cents,
        note: z.string().exactOptional(),
      })
      .nullable()
      .describe('What it took in the end; null: not closed.'),
    holdMark: holdMarkAnswer
      .nullable()
      .describe(
        'Set by a hold, until the release; null: none of its drums is held, or somebody has decided since.',
      ),
    lastAct: z.string().describe('What was done last, by whom and when, and why.'),
    reason: z.string().nullable(),
    changedAt: instant,
    changedBy: z.string().nullable(),
    changedByName: z.string(),
  })
  .meta({
    id: 'Flight',
    description: 'A flight that came out of an accepted plan. What it was before stands in its history.',
  });
export type Flight = Answer<typeof flightAnswer>;

export const shownFlightAnswer = flightAnswer
  .extend({
    loads: z.array(
      z.strictObject({
        stop: z.number(),
        place: z.string(),
        drum: z.string().nullable(),
      }),
    ),
    raised: z.string().nullable(),
  })
  .meta({ id: 'ShownFlight' });
export type ShownFlight = Answer<typeof shownFlightAnswer>;

export const flightPastAnswer = z
  .strictObject({
    flightId: z.string(),
    revision: z.number(),
    act: z.string(),
    state: flightState,
    data: z.unknown(),
    reason: z.string().nullable(),
    at: instant,
    accountId: z.string().nullable(),
    person: z.string(),
  })
  .meta({ id: 'FlightPast', description: 'The flight and its loads after one act.' });
export type FlightPast = Answer<typeof flightPastAnswer>;

export const consequenceLevelsAnswer = z
  .strictObject({
    lowestLitres: z.number(),
    endLitres: z.number(),
    belowMinimum: isoDate.nullable().describe('First day that ends below; null: none.'),
    belowCritical: isoDate.nullable(),
  })
  .meta({ id: 'ConsequenceLevels' });
export type ConsequenceLevels = Answer<typeof consequenceLevelsAnswer>;

export const consequenceAnswer = z
  .strictObject({
    flight: z.string(),
    ifDeclined: z.string(),
    protects: z
      .strictObject({
        place: z.string(),
        date: isoDate,
        level: shortLevel,
      })
      .nullable(),
    caches: z
      .array(
        z.strictObject({
          place: z.string(),
          minimumLitres: litres,
          criticalLitres: litres,
          withIt: consequenceLevelsAnswer,
          without: consequenceLevelsAnswer,
        }),
      )
      .describe('Each cache that would hold less, with the flight and without it.'),
  })
  .meta({ id: 'ConsequenceAnswer' });
export type ConsequenceAnswer = Answer<typeof consequenceAnswer>;

export const amendmentFaultsAnswer = z
  .strictObject({
    faults: z.array(faultAnswer),
  })
  .meta({ id: 'AmendmentFaults' });
export type AmendmentFaults = Answer<typeof amendmentFaultsAnswer>;
