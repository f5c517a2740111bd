import type {
  Flight as ListedFlight,
  ProjectionsAnswer,
  StockAnswer,
  WeekAnswer,
} from '@drumline/contract/answers';
import { z } from 'zod';
import { partOf } from '../../api/index.js';

const surfaceState = z.enum(['dry', 'damp', 'soft', 'closed']);

const runwaySchema = z.object({
  lengthFt: z.number(),
  material: z.string(),
  oneWay: z.boolean(),
  approachFromDeg: z.number().optional(),
  tailwindLimitKt: z.number(),
  committalPoint: z.string().nullable(),
});

export const placeSchema = z.object({
  id: z.string(),
  data: z.object({
    code: z.string(),
    name: z.string(),
    kind: z.enum(['base', 'strip', 'pad']),
    latitudeDeg: z.number(),
    longitudeDeg: z.number(),
    elevationFt: z.number(),
    stripClass: z.number().nullable(),
    runway: runwaySchema.nullable(),
    landingCapacityDrumsPerDay: z.number().nullable(),
    surface: z.object({ staleAfterHours: z.number(), expected: surfaceState }),
    helper: z.string().optional(),
    radioTime: z.string().optional(),
    remarks: z.string().optional(),
  }),
});

export type Place = z.output<typeof placeSchema>['data'];

export const distanceSchema = z.object({
  data: z.object({ between: z.tuple([z.string(), z.string()]), distanceNm: z.number() }),
});

export type Distance = z.output<typeof distanceSchema>['data'];

const slingSchema = z.object({
  date: z.string(),
  helicopter: z.string(),
  from: z.string(),
  to: z.string(),
  drums: z.number(),
  load: z.object({ drums: z.number() }),
  inQuestion: z.object({ drums: z.number(), litres: z.number() }),
});

export type Sling = z.output<typeof slingSchema>;

const cacheSchema = z.object({
  place: z.string(),
  minimumLitres: z.number(),
  criticalLitres: z.number(),
  capacityDrums: z.number(),
  stock: z.object({
    usableLitres: z.number(),
    lastCount: z.object({ countedLitres: z.number(), ageHours: z.number() }).nullable(),
  }),
  projections: z.object({ offered: z.object({ usableLitres: z.array(z.number()) }) }),
  deliveries: z.array(
    z.object({ date: z.string(), litres: z.number(), needsDecision: z.string().nullable() }),
  ),
  slings: z.array(slingSchema),
});

export type Cache = z.output<typeof cacheSchema>;

/** GET /api/projections. Figures by day have one entry more than `dates`: index 0 is now. */
export const outlookSchema = partOf<ProjectionsAnswer>()(
  z.object({ dates: z.array(z.string()), items: z.array(cacheSchema) }),
);

export type Outlook = z.output<typeof outlookSchema>;

/** GET /api/stock: what stands at the bases. */
export const stockSchema = partOf<StockAnswer>()(
  z.object({
    items: z.array(
      z.object({
        place: z.string(),
        sealedDrums: z.number(),
        sealedHeldDrums: z.number(),
        sealedPastRetestDrums: z.number(),
      }),
    ),
  }),
);

export type StockItem = z.output<typeof stockSchema>['items'][number];

/** GET /api/flights. */
export const flightSchema = partOf<ListedFlight>()(
  z.object({
    id: z.string(),
    state: z.string(),
    needsDecision: z.string().nullable(),
    aircraft: z.string(),
    fromPlace: z.string(),
    toPlace: z.string(),
    stops: z.array(z.object({ place: z.string(), drums: z.number() })),
  }),
);

export type Flight = z.output<typeof flightSchema>;

const bookedSchema = z.object({
  id: z.string(),
  aircraft: z.string(),
  route: z.array(z.string()),
  passengers: z.number(),
  spareDrums: z.number().nullable(),
});

export type Booked = z.output<typeof bookedSchema>;

/** GET /api/week, for the booked flights of a day. */
export const bookedOfDaySchema = partOf<WeekAnswer>()(z.object({ booked: z.array(bookedSchema) }));

/** GET /api/surface-reports, the last first. */
export const reportsSchema = z.object({
  items: z.array(
    z.object({
      data: z.object({
        place: z.string(),
        state: surfaceState,
        at: z.string(),
        by: z.string(),
        untilDate: z.string().optional(),
      }),
    }),
  ),
});

export type Report = z.output<typeof reportsSchema>['items'][number]['data'];
