import { z } from 'zod';
import { cents, count, day, isoDate, litres, moneyParts, place, shortLevel } from './field.js';
import { plannedFlightSchema } from './planned-flight-schema.js';

const byDay = z.array(litres);

export const cacheProjection = z.strictObject({
  place,
  dates: z.array(isoDate),
  book: byDay,
  usable: byDay,
  standing: byDay,
  landed: byDay,
  slungIn: byDay,
  slungOut: byDay,
  drawn: byDay,
  unmet: byDay,
  slingShortDrums: z.array(z.number()),
  pastRetest: byDay,
  agedOut: z.array(
    z.strictObject({ place, number: z.string(), litres, retestDue: isoDate, dueDay: z.number().int() }),
  ),
  minimumLitres: litres,
  criticalLitres: litres,
  reserveLitres: litres,
  capacityLitres: litres,
  belowMinimumDay: day.nullable(),
  belowCriticalDay: day.nullable(),
  runOutDay: day.nullable(),
  daysOfCover: z.number().nullable(),
});

export const baseUse = z.strictObject({
  place,
  drumsTaken: count,
  drumsReady: count,
  ownFuelLitres: litres,
  leftLitres: litres,
  note: z.string().nullable(),
});

const planCost = z.strictObject({
  travel: z.number(),
  packs: z.number(),
  changes: z.number(),
  endShort: z.number(),
  belowCushion: z.number(),
  belowMinimum: z.number(),
  belowCritical: z.number(),
  unmet: z.number(),
  total: z.number(),
});

export const proof = z.strictObject({
  objective: z.number(),
  bound: z.number().nullable(),
  gap: z.number().nullable(),
  seconds: z.number(),
  solver: z.string(),
  seed: z.number(),
  iterations: z.number(),
});

const shortage = z.strictObject({
  place,
  date: isoDate,
  day,
  level: shortLevel,
  litres,
  limitLitres: litres,
  text: z.string(),
  blockedBy: z.string(),
});

const decision = z.strictObject({
  flight: z.string(),
  fault: z.strictObject({
    where: z.string(),
    what: z.string(),
    mend: z.string(),
    flights: z.array(z.string()),
  }),
  consequence: z.string(),
});

const risk = z.strictObject({
  fortnights: count,
  seed: z.number(),
  belowCritical: z.number(),
  byCache: z.array(z.strictObject({ place, belowCritical: z.number(), belowMinimum: z.number() })),
  expectedDrums: z.number(),
  allMorning: z.strictObject({ belowCritical: z.number(), expectedDrums: z.number() }),
});

export const flightPlanSchema = z.strictObject({
  title: z.string(),
  firstDay: isoDate,
  days: count,
  offeredDays: count,
  currency: z.string(),
  endTarget: z.enum(['hand plan', 'minimum', 'operator']),
  flights: z.array(plannedFlightSchema),
  caches: z.array(cacheProjection),
  bases: z.array(baseUse),
  cost: moneyParts,
  tiers: planCost,
  proof,
  moneyGap: z.strictObject({ savedAtMost: cents, share: z.number() }).nullable(),
  shortages: z.array(shortage),
  needsDecision: z.array(decision),
  remarks: z.array(z.string()),
  risk: risk.nullable(),
});

/** What `drumline plan --json` writes: the plan, and plans to compare it with. */
export const planDocumentSchema = z.strictObject({
  format: z.literal('drumline-plan/1'),
  madeFrom: z.string(),
  plan: flightPlanSchema,
  beside: z.array(z.strictObject({ name: z.string(), plan: flightPlanSchema })),
});
