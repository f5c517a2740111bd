import type { MorningAnswer } from '@drumline/contract/answers';
import { z } from 'zod';
import { partOf } from '../../api/index.js';
import { slingRemedySchema } from '../../slings/sling-remedy.js';
import { handoverSchema } from './handover-read.js';

const surface = z.enum(['dry', 'damp', 'soft', 'closed']);
const placeAndDay = z.object({ place: z.string(), date: z.string() });

const flight = z.object({
  id: z.string(),
  state: z.string(),
  needsDecision: z.string().nullable(),
  by: z.string(),
  date: z.string(),
  departs: z.string(),
  aircraft: z.string(),
  pilot: z.string().nullable(),
  route: z.array(z.string()),
  drums: z.number(),
  ifDeclined: z.string(),
});

const booked = z.object({
  id: z.string(),
  date: z.string(),
  aircraft: z.string(),
  route: z.array(z.string()),
  purpose: z.string(),
  passengers: z.number(),
  needsDecision: z.string(),
  by: z.string(),
});

const unheard = flight.omit({ by: true, ifDeclined: true });

const belowCritical = z.object({
  place: z.string(),
  date: z.string().nullable(),
  litres: z.number(),
  criticalLitres: z.number(),
});

const belowMinimum = belowCritical
  .omit({ criticalLitres: true })
  .extend({ minimumLitres: z.number(), backOn: z.string().nullable() });

const openCalls = z.object({
  hold: z.string(),
  of: z.union([z.object({ batch: z.string() }), z.object({ drum: z.string() })]),
  reason: z.string(),
  by: z.string(),
  at: z.string(),
  drums: z.number(),
  toCall: z.array(z.string()),
  called: z.number(),
});

const openCase = z.object({
  count: z.string(),
  place: z.string(),
  at: z.string(),
  countedBy: z.array(z.string()),
  countedLitres: z.number(),
  bookLitres: z.number(),
  toleranceLitres: z.number(),
  proposed: z.number(),
});

const proposal = z.object({
  id: z.string(),
  subject: z.string(),
  act: z.string(),
  proposedAt: z.string(),
  signedBy: z.array(z.string()),
  stillToSign: z.object({ people: z.number(), roles: z.array(z.string()) }),
  mayAgree: z.boolean(),
});

const crew = z.object({
  pilot: z.string().nullable(),
  flight: z.string(),
  state: z.string(),
  expectedAt: z.string(),
  what: z.enum(['not loaded', 'not off', 'not back', 'drums not reported']),
});

const strip = z.object({
  place: z.string(),
  name: z.string(),
  surface: surface.nullable(),
  counts: surface,
  reportedAt: z.string().nullable(),
  by: z.string().nullable(),
  reported: surface.nullable(),
  staleAt: z.string().nullable(),
  untilDate: z.string().nullable(),
  radioTime: z.string().nullable(),
  tailwindLimitKt: z.number().nullable(),
  stripClass: z.number().nullable(),
  drumsToday: z.number(),
  drumsADay: z.number().nullable(),
});

const away = z.object({
  flight: z.string(),
  state: z.string(),
  aircraft: z.string(),
  pilot: z.string().nullable(),
  fromPlace: z.string(),
  toPlace: z.string(),
  stops: z.array(z.object({ place: z.string(), drums: z.number() })),
  offAt: z.string().nullable(),
  landedAt: z.string().nullable(),
  expectedBackAt: z.string(),
  overdueAt: z.string().nullable(),
  word: z.enum(['in the circuit', 'down and well', 'overdue']),
});

const windowFlight = z.object({
  flight: z.string(),
  aircraft: z.string(),
  drums: z.number(),
  blockHours: z.number(),
  chance: z.number(),
  harmAvoided: z.number(),
  protects: placeAndDay.nullable(),
});

const fuel = z.object({
  place: z.string(),
  usableLitres: z.number(),
  bookLitres: z.number(),
  heldLitres: z.number(),
  pastRetestLitres: z.number(),
  reserveLitres: z.number(),
  reserveSetLitres: z.number(),
  notReportedLitres: z.number(),
  countedAt: z.string().nullable(),
  confidence: z.enum(['high', 'medium', 'low']),
});

const fuelAtBase = z.object({
  place: z.string(),
  usableLitres: z.number(),
  usableDrums: z.number(),
  heldDrums: z.number(),
  pastRetestDrums: z.number(),
  bulkLitres: z.number(),
});

/** GET /api/morning. */
export const morningSchema = partOf<MorningAnswer>()(
  z.object({
    asOf: z.string(),
    today: z.string(),
    since: z.string(),
    handedOverAt: z.string().nullable(),
    handover: handoverSchema.nullable(),
    flights: z.array(flight),
    booked: z.array(booked),
    didTheyFly: z.array(unheard),
    fillsShort: z.array(
      z.object({
        place: z.string(),
        short: z.array(z.string()),
        flights: z.array(z.string()),
        by: z.string(),
      }),
    ),
    flightsStanding: z.number(),
    belowCritical: z.array(belowCritical),
    belowMinimum: z.array(belowMinimum),
    slingRemedies: z.array(slingRemedySchema),
    openCalls: z.array(openCalls),
    cases: z.array(openCase),
    proposals: z.array(proposal),
    raised: z.array(
      z.object({
        id: z.string(),
        mayHurt: z.boolean(),
        place: z.string().nullable(),
        what: z.string(),
        whatNext: z.string(),
      }),
    ),
    moreRaised: z.object({ mayHurt: z.number(), rest: z.number() }),
    changed: z.array(
      z.object({ at: z.string(), writtenAt: z.string().nullable(), what: z.string(), source: z.string() }),
    ),
    notHeard: z.object({
      draws: z.array(
        z.object({
          date: z.string(),
          place: z.string(),
          helicopter: z.string(),
          programme: z.string(),
          litres: z.number(),
        }),
      ),
      caches: z.array(
        z.object({ place: z.string(), countedAt: z.string().nullable(), why: z.array(z.string()) }),
      ),
      phones: z.array(z.object({ person: z.string(), hoursSilent: z.number() })),
      crews: z.array(crew),
    }),
    oneWindow: z.array(windowFlight),
    strips: z.array(strip),
    away: z.array(away),
    overdueRule: z.object({ afterMinutes: z.number(), reference: z.string() }).nullable(),
    firstTakeOff: z
      .object({ at: z.string(), flight: z.string(), aircraft: z.string(), lateMinutes: z.number() })
      .nullable(),
    worstOdds: z
      .object({ place: z.string(), morningCancel: z.number(), afternoonCancel: z.number() })
      .nullable(),
    fuel: z.array(fuel),
    bases: z.array(fuelAtBase),
  }),
);

export type Morning = z.output<typeof morningSchema>;
export type Strip = z.output<typeof strip>;
export type Away = z.output<typeof away>;
