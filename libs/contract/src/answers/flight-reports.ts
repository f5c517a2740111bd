import { z } from 'zod';
import { plannedFlightSchema } from '../plan/planned-flight-schema.js';
import { type Answer, cents, clockTime, hours, instant, isoDate, lb } from './field.js';
import { holdMarkAnswer, stopAnswer } from './flights.js';
import { flightState } from './words.js';

/** By which means an event came to be written down. */
export const means = z.enum(['screen', 'phone', 'radio', 'paper']);
export type Means = Answer<typeof means>;

export const storedFlightReportAnswer = z
  .strictObject({
    id: z.string(),
    flightId: z.string(),
    kind: z.enum(['load', 'take off', 'land', 'turn back', 'end elsewhere', 'refuse', 'report', 'problem']),
    happenedAt: instant,
    receivedAt: instant,
    data: z
      .discriminatedUnion('kind', [
        z.strictObject({
          happenedAt: z.string(),
          writtenAt: z.string(),
          means: means,
          witnesses: z.array(z.string()),
          kind: z.literal('load'),
          flight: z.string(),
          version: z.number(),
          totals: z.strictObject({
            load: z.strictObject({
              bySheetLb: lb,
              byHandLb: lb,
            }),
            takeOff: z.strictObject({
              bySheetLb: lb,
              byAircraftLb: lb,
            }),
          }),
          drums: z.array(
            z.strictObject({
              movement: z.string(),
              drum: z.string(),
              to: z.string(),
              position: z.string().exactOptional(),
            }),
          ),
          bySoftFigures: z.boolean(),
          by: z.string().exactOptional(),
          note: z.string().exactOptional(),
          signed: z
            .strictObject({
              by: z.string(),
              reason: z.string(),
              second: z.string().exactOptional(),
            })
            .exactOptional(),
          allTheSame: z.boolean().exactOptional(),
        }),
        z.strictObject({
          happenedAt: z.string(),
          writtenAt: z.string(),
          means: means,
          witnesses: z.array(z.string()),
          kind: z.literal('take off'),
          flight: z.string(),
          by: z.string().exactOptional(),
          note: z.string().exactOptional(),
        }),
        z.strictObject({
          happenedAt: z.string(),
          writtenAt: z.string(),
          means: means,
          witnesses: z.array(z.string()),
          kind: z.literal('land'),
          flight: z.string(),
          place: z.string(),
          by: z.string().exactOptional(),
          note: z.string().exactOptional(),
        }),
        z.strictObject({
          happenedAt: z.string(),
          writtenAt: z.string(),
          means: means,
          witnesses: z.array(z.string()),
          kind: z.literal('turn back'),
          flight: z.string(),
          place: z.string(),
          by: z.string().exactOptional(),
          note: z.string().exactOptional(),
        }),
        z.strictObject({
          happenedAt: z.string(),
          writtenAt: z.string(),
          means: means,
          witnesses: z.array(z.string()),
          kind: z.literal('end elsewhere'),
          flight: z.string(),
          place: z.string(),
          by: z.string().exactOptional(),
          note: z.string().exactOptional(),
        }),
        z.strictObject({
          happenedAt: z.string(),
          writtenAt: z.string(),
          means: means,
          witnesses: z.array(z.string()),
          kind: z.literal('refuse'),
          flight: z.string(),
          by: z.string().exactOptional(),
          note: z.string().exactOptional(),
          reason: z.string().exactOptional(),
        }),
        z.strictObject({
          happenedAt: z.string(),
          writtenAt: z.string(),
          means: means,
          witnesses: z.array(z.string()),
          kind: z.literal('report'),
          flight: z.string(),
          by: z.string().exactOptional(),
          note: z.string().exactOptional(),
        }),
        z.strictObject({
          happenedAt: z.string(),
          writtenAt: z.string(),
          means: means,
          witnesses: z.array(z.string()),
          kind: z.literal('problem'),
          flight: z.string(),
          what: z.enum([
            'aircraft',
            'wrong drum',
            'cannot unload',
            'did not land',
            'strip not as said',
            'other',
          ]),
          by: z.string().exactOptional(),
          note: z.string().exactOptional(),
          words: z.string().exactOptional(),
        }),
      ])
      .describe('As it was sent.'),
    author: z.string().describe('Who reports; it stays so, whoever sends it.'),
    sentBy: z.string().describe('Whose session sent it first.'),
    accountId: z.string().nullable(),
    raised: z.array(z.string()).describe('What it leaves to be looked at.'),
  })
  .meta({
    id: 'StoredFlightReport',
    description: 'A report as somebody gave it: kept as it came, whatever became of it.',
  });
export type StoredFlightReport = Answer<typeof storedFlightReportAnswer>;

export const flightReportAnswer = z
  .strictObject({
    report: storedFlightReportAnswer,
    entered: z
      .boolean()
      .describe('False: a loading that may not be entered as loaded; it is kept, and there to be looked at.'),
    flight: z.strictObject({
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
      loads: z.array(
        z.strictObject({
          place: z.string(),
          drum: z.string().nullable(),
          stop: z.number().describe("Index into the flight's stops."),
        }),
      ),
    }),
  })
  .meta({ id: 'FlightReportAnswer' });
export type FlightReportAnswer = Answer<typeof flightReportAnswer>;
