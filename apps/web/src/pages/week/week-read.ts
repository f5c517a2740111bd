import type { WeekAnswer } from '@drumline/contract/answers';
import { z } from 'zod';
import { partOf } from '../../api/index.js';

const moneySchema = z.object({
  flight: z.number(),
  fuel: z.number(),
  handling: z.number(),
  total: z.number(),
  litres: z.number(),
  perLitre: z.number().nullable(),
});

export type Money = z.output<typeof moneySchema>;

const flightSchema = z.object({
  id: z.string(),
  kind: z.enum(['positioning', 'booked']),
  state: z.string(),
  version: z.number(),
  revision: z.number(),
  needsDecision: z.string().nullable(),
  heldInPlace: z.boolean(),
  unheard: z.boolean(),
  date: z.string(),
  departs: z.string(),
  aircraft: z.string(),
  pilot: z.string().nullable(),
  route: z.array(z.string()),
  drums: z.number(),
  drumsPossible: z.number(),
  binding: z.object({ name: z.string(), place: z.string().nullable() }).nullable(),
  lastAct: z.string(),
  changedAt: z.string(),
  changedByName: z.string(),
});

export type WeekFlight = z.output<typeof flightSchema>;

const bookedSchema = z.object({
  id: z.string(),
  date: z.string(),
  aircraft: z.string(),
  purpose: z.string(),
  departs: z.string().nullable(),
  heldHours: z.number(),
  route: z.array(z.string()),
  passengers: z.number(),
  spareDrums: z.number().nullable(),
  needsDecision: z.string().nullable(),
});

export type WeekBooked = z.output<typeof bookedSchema>;

const shortSchema = z.object({
  litreDays: z.number(),
  first: z.object({ place: z.string(), date: z.string() }).nullable(),
});

export type ShortBy = z.output<typeof shortSchema>;

const planSchema = z.object({
  id: z.string(),
  number: z.number(),
  asOf: z.string(),
  acceptedByName: z.string(),
  cost: moneySchema,
  moneyGap: z.object({ savedAtMost: z.number(), share: z.number() }).nullable(),
  flights: z.number(),
  laterIdeas: z.number(),
  isAsAccepted: z.boolean(),
});

export type StandingPlan = z.output<typeof planSchema>;

/** GET /api/week. */
export const weekSchema = partOf<WeekAnswer>()(
  z.object({
    asOf: z.string(),
    today: z.string(),
    days: z.array(z.object({ date: z.string(), noFlying: z.boolean() })),
    aircraft: z.array(
      z.object({
        tail: z.string(),
        type: z.string(),
        home: z.string(),
        absences: z.array(z.object({ from: z.string(), until: z.string(), reason: z.string() })),
      }),
    ),
    caches: z.array(z.string()),
    flights: z.array(flightSchema),
    booked: z.array(bookedSchema),
    landings: z.array(
      z.object({ date: z.string(), place: z.string(), drums: z.number(), limitDrums: z.number().nullable() }),
    ),
    cost: moneySchema,
    flightsCosted: z.number(),
    tally: z.object({
      belowCritical: shortSchema,
      belowMinimum: shortSchema,
      drums: z.number(),
      expectedDrums: z.number(),
      bases: z.array(
        z.object({
          place: z.string(),
          drumsTaken: z.number(),
          drumsReady: z.number(),
          note: z.string().nullable(),
        }),
      ),
    }),
    lastDay: z.string(),
    stripLimitsFrom: z.array(z.string()),
    plan: planSchema.nullable(),
    heardSince: z.array(z.object({ place: z.string(), state: z.string(), at: z.string(), by: z.string() })),
    stockIsBehind: z.boolean(),
  }),
);

export type Week = z.output<typeof weekSchema>;
