import { z } from 'zod';
import { surfaceState } from '../scenario/place-schema.js';
import { standingState } from '../scenario/programme-schema.js';
import {
  clockTime,
  count,
  day,
  hours,
  isoDate,
  kt,
  lb,
  litres,
  moneyParts,
  nm,
  place,
  shortLevel,
} from './field.js';

export const legLimit = z.strictObject({
  name: z.enum([
    'max take-off weight',
    'strip take-off limit',
    'max landing weight',
    'strip landing limit',
    'max zero-fuel weight',
    'fuel capacity',
    'drum positions',
    'floor limit',
    'balance',
    'passengers aboard',
    'closed when soft',
    'closed',
    'type not approved',
    'unload or stay',
  ]),
  place: place.nullable(),
  roomLb: lb,
  drums: count,
});

export const plannedLeg = z.strictObject({
  from: place,
  to: place,
  distanceNm: nm,
  windKt: kt.nullable(),
  blockHours: hours,
  surface: surfaceState,
  drumsAboard: count,
  drumsPossible: count,
  binding: legLimit,
  spareLb: lb,
  relax: z.string(),
  positions: z.array(z.string()),
});

const unloadOrStay = z.strictObject({
  place,
  arrivalLb: lb,
  printedArrivalLb: lb,
  takeoffLimitLb: lb,
  overLb: lb,
  printedOverLb: lb,
  canLeaveLoaded: z.boolean(),
});

export const plannedStop = z.strictObject({
  place,
  drums: count,
  heldDrums: count.exactOptional(),
  unloadOrStay,
  drumsIfSoft: count.nullable(),
  ifSoft: z.string(),
  tailwindLimitKt: kt,
  committalPoint: z.string().nullable(),
});

export const flightReason = z.strictObject({
  protects: z.strictObject({ place, date: isoDate, level: shortLevel }).nullable(),
  daysInHand: z.number().nullable(),
  ifDeclined: z.string(),
  text: z.string(),
});

export const plannedFlightSchema = z.strictObject({
  id: z.string().min(1),
  kind: z.enum(['positioning', 'booked']),
  state: standingState,
  date: isoDate,
  day,
  departs: clockTime,
  half: z.enum(['morning', 'afternoon']),
  aircraft: z.string(),
  type: z.string(),
  pilot: z.string().nullable(),
  from: place,
  to: place,
  legs: z.array(plannedLeg).min(1),
  stops: z.array(plannedStop),
  drums: count,
  litres,
  rampFuelLb: lb,
  ownFuelLitres: litres,
  blockHours: hours,
  dutyHours: hours,
  cost: moneyParts,
  reason: flightReason,
  needsDecision: z.string().nullable(),
});
