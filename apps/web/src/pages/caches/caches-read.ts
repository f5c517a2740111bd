import type { ProjectionChangeAnswer, ProjectionsAnswer } from '@drumline/contract/answers';
import { z } from 'zod';
import { partOf } from '../../api/index.js';
import { slingRemedySchema } from '../../slings/sling-remedy.js';

const levelsSchema = z.object({
  usableLitres: z.array(z.number()),
  lowest: z.object({ litres: z.number(), day: z.number() }),
  outOfReserveLitres: z.array(z.number()),
  unmetLitres: z.array(z.number()),
  belowMinimumDay: z.number().nullable(),
  belowCriticalDay: z.number().nullable(),
  runOutDay: z.number().nullable(),
});

export type Levels = z.output<typeof levelsSchema>;

const lastCountSchema = z.object({
  count: z.object({
    at: z.string(),
    by: z.string(),
    seenFrom: z.enum(['ground', 'air']),
    litres: z.number(),
  }),
  countedLitres: z.number(),
  toleranceLitres: z.number(),
  verdict: z.enum(['accepted', 'lower', 'higher']),
  ageHours: z.number(),
});

const cacheSchema = z.object({
  place: z.string(),
  minimumLitres: z.number(),
  criticalLitres: z.number(),
  medevacReserveLitres: z.number(),
  capacityDrums: z.number(),
  suggestedMinimum: z.object({
    litres: z.number(),
    leadTimeUseLitres: z.number(),
    safetyStockLitres: z.number(),
    reserveLitres: z.number(),
  }),
  stock: z.object({
    bookLitres: z.number(),
    usableLitres: z.number(),
    drawableLitres: z.number(),
    heldLitres: z.number(),
    pastRetestLitres: z.number(),
    isOverCapacity: z.boolean(),
    sealedDrums: z.number(),
    partUsedDrums: z.number(),
    emptyDrums: z.number(),
    confidence: z.enum(['high', 'medium', 'low']),
    why: z.array(z.string()),
    lastCount: lastCountSchema.nullable(),
  }),
  daysOfCover: z.number().nullable(),
  projections: z.object({ noDeliveries: levelsSchema, offered: levelsSchema }),
  deliveries: z.array(
    z.object({
      flight: z.string(),
      state: z.string(),
      date: z.string(),
      drums: z.number(),
      heldDrums: z.number(),
      litres: z.number(),
      needsDecision: z.string().nullable(),
    }),
  ),
  draws: z.array(
    z.object({
      date: z.string(),
      litres: z.number(),
      for: z.string(),
      helicopter: z.string().nullable(),
    }),
  ),
  slings: z.array(
    z.object({
      date: z.string(),
      helicopter: z.string(),
      from: z.string(),
      to: z.string(),
      drums: z.number(),
      load: z.object({ drums: z.number(), litres: z.number() }),
    }),
  ),
  notReported: z.array(
    z.object({ date: z.string(), helicopter: z.string(), programme: z.string(), litres: z.number() }),
  ),
  agedOut: z.array(z.object({ number: z.string() })),
});

export type Cache = z.output<typeof cacheSchema>;

/** GET /api/projections. Figures by day have one entry more than `dates`: index 0 is now. */
export const cachesSchema = partOf<ProjectionsAnswer>()(
  z.object({
    asOf: z.string(),
    firstDay: z.string(),
    dates: z.array(z.string()),
    fillLitres: z.number(),
    serviceLevelPercent: z.number(),
    laterIdeas: z.number(),
    items: z.array(cacheSchema),
    slingRemedies: z.array(slingRemedySchema),
  }),
);

export type Caches = z.output<typeof cachesSchema>;

export const placeSchema = z.object({
  id: z.string(),
  data: z.object({
    code: z.string(),
    name: z.string(),
    kind: z.enum(['base', 'strip', 'pad']),
    stripClass: z.number().nullable(),
  }),
});

export type Place = z.output<typeof placeSchema>['data'];

const courseSchema = z.object({
  minimumLitres: z.number(),
  criticalLitres: z.number(),
  levels: levelsSchema,
});

const plannedSchema = z.object({
  programme: z.string(),
  name: z.string(),
  hours: z.number(),
  litres: z.number(),
  recharge: z.number().nullable(),
});

/** POST /api/projections/consequence. */
export const consequenceSchema = partOf<ProjectionChangeAnswer>()(
  z.object({
    dates: z.array(z.string()),
    items: z.array(z.object({ place: z.string(), before: courseSchema, after: courseSchema })),
    programmes: z.array(z.object({ before: plannedSchema, after: plannedSchema })),
    slingRemedies: z.array(slingRemedySchema),
  }),
);

export type Consequence = z.output<typeof consequenceSchema>;
