import { z } from 'zod';
import { type Answer, cents, clockTime, hours, instant, isoDate } from '../field.js';
import { plannedFlight } from '../planned.js';
import { faultAnswer, flightKind, flightState } from '../words.js';

export const stopAnswer = z
  .strictObject({
    place: z.string(),
    drums: z.number(),
  })
  .meta({ id: 'FlightStop' });

export const holdMarkAnswer = z
  .strictObject({
    why: z.string(),
    besides: z.string().nullable().describe('What else the flight needed a decision for.'),
  })
  .meta({ id: 'HoldMark' });

export const flightAnswer = z
  .strictObject({
    id: z.string().describe('"F012"; a booked flight that carries drums has the number of its booking.'),
    kind: flightKind,
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
    planned: plannedFlight.describe(
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
    ruleMark: z
      .string()
      .nullable()
      .describe('What a rule has marked it for; null: no rule has, or somebody has decided since.'),
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

/** A drum set aside for a stop of a flight. */
export const flightLoad = z.strictObject({
  stop: z.number().describe("Index into the flight's stops."),
  place: z.string(),
  drum: z.string().nullable(),
});

export const shownFlightAnswer = flightAnswer
  .extend({ loads: z.array(flightLoad), raised: z.string().nullable() })
  .meta({ id: 'ShownFlight' });

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

export const amendmentFaultsAnswer = z
  .strictObject({
    faults: z.array(faultAnswer),
    departs: z.string().nullable().meta({
      description:
        'Off time of the amended flight; where that breaks something, the first that breaks nothing; null: there is none',
    }),
  })
  .meta({ id: 'AmendmentFaults' });
