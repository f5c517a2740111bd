import type { CardAnswer } from '@drumline/contract/answers';
import { z } from 'zod';
import { partOf } from '../../../api/index.js';

const surface = z.enum(['dry', 'damp', 'soft', 'closed']);

const costSchema = z.object({
  flight: z.number(),
  fuel: z.number(),
  handling: z.number(),
  litres: z.number(),
  perLitre: z.number().nullable(),
});

const limitSchema = z.object({
  name: z.string(),
  place: z.string().nullable(),
  surface: surface.nullable(),
  limitLb: z.number().nullable(),
  positions: z.number().nullable(),
  spareLb: z.number(),
  binds: z.boolean(),
});

export type LimitLine = z.output<typeof limitSchema>;

const legSchema = z.object({
  from: z.string(),
  to: z.string(),
  surface,
  drumsAboard: z.number(),
  drumsPossible: z.number(),
  limits: z.array(limitSchema),
});

export type LegLimits = z.output<typeof legSchema>;

const stopSchema = z.object({ place: z.string(), drums: z.number() });

const loadShape = { drums: z.number(), kg: z.number(), cost: costSchema };

const plannedSchema = z.object({
  stops: z.array(
    stopSchema.extend({
      heldDrums: z.number().optional(),
      unloadOrStay: z.object({
        printedArrivalLb: z.number(),
        takeoffLimitLb: z.number(),
        printedOverLb: z.number(),
      }),
      ifSoft: z.string(),
      tailwindLimitKt: z.number(),
      committalPoint: z.string().nullable(),
    }),
  ),
  drums: z.number(),
  cost: costSchema,
  blockHours: z.number(),
  reason: z.object({
    text: z.string(),
    ifDeclined: z.string(),
    protects: z.object({ place: z.string(), date: z.string(), level: z.string() }).nullable(),
  }),
});

export type Planned = z.output<typeof plannedSchema>;

const heardSchema = z.object({
  place: z.string(),
  counts: surface,
  report: z
    .object({ state: surface, at: z.string(), by: z.string(), untilDate: z.string().optional() })
    .nullable(),
  staleAt: z.string().nullable(),
  isStale: z.boolean(),
});

export type Heard = z.output<typeof heardSchema>;

const todaySchema = z.object({
  planned: plannedSchema,
  closed: z.string().nullable(),
  load: z.object(loadShape),
  legs: z.array(legSchema),
  fewer: z.object({ ...loadShape, stops: z.array(stopSchema), legs: z.array(legSchema) }).nullable(),
  heard: z.array(heardSchema),
  crew: z.array(z.object({ id: z.string(), whyNot: z.string().nullable() })),
  classes: z.array(z.object({ place: z.string(), stripClass: z.number() })),
});

export type Today = z.output<typeof todaySchema>;

const levelsSchema = z.object({
  lowestLitres: z.number(),
  endLitres: z.number(),
  belowMinimum: z.string().nullable(),
  belowCritical: z.string().nullable(),
});

const consequenceSchema = z.object({
  ifDeclined: z.string(),
  protects: z.object({ place: z.string(), date: z.string(), level: z.string() }).nullable(),
  caches: z.array(
    z.object({
      place: z.string(),
      minimumLitres: z.number(),
      criticalLitres: z.number(),
      withIt: levelsSchema,
      without: levelsSchema,
    }),
  ),
});

export type Consequence = z.output<typeof consequenceSchema>;

/** GET /api/flights/:id/card. */
export const cardSchema = partOf<CardAnswer>()(
  z.object({
    id: z.string(),
    revision: z.number(),
    planned: plannedSchema,
    reason: z.string().nullable(),
    drumNumbers: z.array(z.object({ place: z.string(), drum: z.string().nullable() })),
    weighed: z.object({ kg: z.number(), lbOnLegs: z.array(z.number()) }).nullable(),
    today: todaySchema.nullable(),
    faults: z.array(z.object({ path: z.string(), problem: z.string(), remedy: z.string() })),
    ifDeclined: consequenceSchema.nullable(),
  }),
);

export type Card = z.output<typeof cardSchema>;
