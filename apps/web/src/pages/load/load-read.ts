import type { LoadAnswer, TotalsAnswer } from '@drumline/contract/answers';
import { z } from 'zod';
import { partOf } from '../../api/index.js';
import { barSchema } from './bar-read.js';
import { sheetSchema, surface } from './sheet-read.js';

const momentSchema = z.object({
  leg: z.string(),
  moment: z.enum(['ramp', 'zero fuel', 'take-off', 'landing']),
  armIn: z.number(),
  forwardIn: z.number().nullable(),
  aftIn: z.number().nullable(),
  inside: z.boolean(),
});

export type Moment = z.output<typeof momentSchema>;

const placedSchema = z.object({ drum: z.string(), position: z.string() });

export type Placed = z.output<typeof placedSchema>;

export const standingSchema = z.object({
  holds: z.boolean(),
  faults: z.array(z.string()),
  moments: z.array(momentSchema),
  mend: z.object({ words: z.string(), positions: z.array(placedSchema) }).nullable(),
});

export type Standing = z.output<typeof standingSchema>;

const fallbackSchema = z.object({
  leg: z.number(),
  place: z.string(),
  take: z.number().nullable(),
  leave: z.array(z.string()),
  moves: z.array(z.string()),
  words: z.string(),
  moments: z.array(momentSchema),
  drumsLb: z.number(),
});

export type Fallback = z.output<typeof fallbackSchema>;

const loadSchema = standingSchema.extend({
  sheet: sheetSchema,
  bars: z.array(barSchema),
  fallbacks: z.array(fallbackSchema),
});

export type Load = z.output<typeof loadSchema>;

const plannedSchema = z.object({
  assumptions: z.string(),
  fuelWords: z.string(),
  cautions: z.array(z.string()),
  legs: z.array(z.object({ from: z.string(), to: z.string(), distanceNm: z.number() })),
  bars: z.array(barSchema),
});

export type Planned = z.output<typeof plannedSchema>;

const cabinSchema = z.object({
  configuration: z.string(),
  positions: z.array(
    z.object({ id: z.string(), armIn: z.number(), limitLb: z.number(), unloadOrder: z.number() }),
  ),
});

export type Cabin = z.output<typeof cabinSchema>;

/** GET /api/flights/:id/sheet. */
export const answerSchema = partOf<LoadAnswer>()(
  z.object({
    id: z.string(),
    kind: z.string(),
    state: z.string(),
    version: z.number(),
    revision: z.number(),
    needsDecision: z.string().nullable(),
    date: z.string(),
    departs: z.string(),
    aircraft: z.string(),
    pilot: z.string().nullable(),
    route: z.array(z.string()),
    lastAct: z.string(),
    changedAt: z.string(),
    changedByName: z.string(),
    type: z.object({
      id: z.string(),
      note: z.string().nullable(),
      maxZeroFuelLb: z.number(),
      envelope: z.array(z.object({ weightLb: z.number(), forwardIn: z.number(), aftIn: z.number() })),
    }),
    cabin: cabinSchema.nullable(),
    load: loadSchema.nullable(),
    why: z.string().nullable(),
    planned: plannedSchema.nullable(),
    toFill: z.number(),
    nextOldest: z.array(
      z.object({
        place: z.string(),
        drum: z.object({ number: z.string(), batch: z.string(), kg: z.number() }).nullable(),
      }),
    ),
    insteadOfHeld: z
      .object({
        held: z.array(z.string()),
        fit: z.array(z.string()),
        setAside: z.array(z.object({ flight: z.string(), drums: z.number() })),
        stops: z.array(z.object({ place: z.string(), drums: z.number(), numbers: z.array(z.string()) })),
      })
      .nullable(),
    asPlanned: z.array(
      z.object({
        place: z.string(),
        printedArrivalLb: z.number(),
        takeoffLimitLb: z.number(),
        printedOverLb: z.number(),
      }),
    ),
    planningKg: z.number(),
    crew: z.array(z.object({ id: z.string(), whyNot: z.string().nullable() })),
    stops: z.array(z.object({ place: z.string(), drums: z.array(z.string()) })),
    reported: z.array(z.object({ place: z.string(), state: surface, at: z.string(), by: z.string() })),
    crewsSaid: z.array(
      z.object({ flight: z.string(), kind: z.string(), at: z.string(), by: z.string(), words: z.string() }),
    ),
    toleranceLb: z.number().nullable(),
    loadings: z.array(
      z.object({
        version: z.number(),
        at: z.string(),
        by: z.string(),
        means: z.enum(['screen', 'phone', 'radio', 'paper']),
        witnesses: z.array(z.string()),
        load: z.object({ bySheetLb: z.number(), byHandLb: z.number(), differenceLb: z.number() }),
        takeOff: z.object({ bySheetLb: z.number(), byAircraftLb: z.number(), differenceLb: z.number() }),
        signed: z.object({ by: z.string(), reason: z.string(), second: z.string().nullable() }).nullable(),
        checkCode: z.string().nullable(),
        raised: z.array(z.string()),
      }),
    ),
  }),
);

export type LoadedFlight = z.output<typeof answerSchema>;

/** POST /api/flights/:id/totals. */
export const totalsSchema = partOf<TotalsAnswer>()(
  z.object({
    of: z.enum(['load', 'take-off weight']),
    agrees: z.boolean(),
    differenceLb: z.number(),
    words: z.string(),
    slips: z.array(z.object({ kind: z.string(), title: z.string(), words: z.string() })),
    advice: z.string(),
    bySheetLb: z.number(),
    typedLb: z.number(),
    toleranceLb: z.number(),
    roundingWords: z.string().nullable(),
  }),
);

export type Totals = z.output<typeof totalsSchema>;
