import type { PlanDifferencesAnswer } from '@drumline/contract/answers';
import { z } from 'zod';
import { partOf } from '../../../api/index.js';
import { moneySchema } from '../plan/money-read.js';

const flightSchema = z.object({
  id: z.string(),
  kind: z.enum(['positioning', 'booked']),
  state: z.string(),
  date: z.string(),
  departs: z.string(),
  aircraft: z.string(),
  pilot: z.string().nullable(),
  from: z.string(),
  stops: z.array(z.object({ place: z.string(), drums: z.number() })),
  legs: z.array(
    z.object({
      drumsAboard: z.number(),
      drumsPossible: z.number(),
      spareLb: z.number(),
      binding: z.object({ name: z.string(), place: z.string().nullable().optional() }),
    }),
  ),
  drums: z.number(),
  litres: z.number(),
  blockHours: z.number(),
  cost: moneySchema,
  reason: z.object({
    protects: z.object({ place: z.string(), date: z.string(), level: z.string() }).nullable(),
    text: z.string(),
  }),
});

export type ComparedFlight = z.output<typeof flightSchema>;

const changeSchema = z.object({ before: flightSchema, after: flightSchema });

export type FlightChange = z.output<typeof changeSchema>;

const totalsSchema = z.object({
  flights: z.number(),
  drums: z.number(),
  litres: z.number(),
  blockHours: z.number(),
  cost: moneySchema,
  drumsFromBase: z.array(z.object({ place: z.string(), drums: z.number() })),
});

export type Totals = z.output<typeof totalsSchema>;

const basesSchema = z.array(
  z.object({
    place: z.string(),
    drumsReady: z.number(),
    leftLitres: z.number(),
    note: z.string().nullable(),
  }),
);

/** GET /api/plans/:id/differences. */
export const differencesSchema = partOf<PlanDifferencesAnswer>()(
  z.object({
    removed: z.array(flightSchema),
    added: z.array(flightSchema),
    moved: z.array(changeSchema),
    drumsChanged: z.array(changeSchema),
    same: z.array(changeSchema),
    totals: z.object({ before: totalsSchema, after: totalsSchema }),
    lowest: z.array(
      z.object({
        place: z.string(),
        beforeLitres: z.number(),
        afterLitres: z.number(),
        minimumLitres: z.number(),
        criticalLitres: z.number(),
        withIdeas: z.object({ beforeLitres: z.number(), afterLitres: z.number() }),
      }),
    ),
    asOf: z.string(),
    lastOfferedDay: z.string(),
    lastDay: z.string(),
    laterIdeas: z.object({ before: z.number(), after: z.number() }),
    mayLeaveOut: z.array(z.string()),
    leftOut: z.array(z.string()),
    faultsAfter: z.array(z.object({ flights: z.array(z.string()), text: z.string() })),
    faults: z.array(z.object({ flight: z.string(), text: z.string() })),
    bases: z.object({ before: basesSchema, after: basesSchema }),
    cannotKeep: z.array(z.object({ text: z.string(), blockedBy: z.string() })),
    remarks: z.array(z.string()),
    expectedDrums: z.object({ before: z.number(), after: z.number() }),
    levels: z.array(
      z.object({
        place: z.string(),
        dates: z.array(z.string()),
        before: z.array(z.number()),
        after: z.array(z.number()),
      }),
    ),
  }),
);

export type Differences = z.output<typeof differencesSchema>;
export type Lowest = Differences['lowest'][number];
