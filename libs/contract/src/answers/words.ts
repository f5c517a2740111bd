import { z } from 'zod';
import type { Answer } from './field.js';

/** State of any flight; how it goes from one to the next stands in docs/flight-states.md. */
export const flightState = z.enum([
  'loaded',
  'closed',
  'offered',
  'approved',
  'given',
  'away',
  'home',
  'reported',
  'idea',
  'declined',
  'called off',
  'turned back',
  'ended elsewhere',
]);
export type FlightState = Answer<typeof flightState>;

export const shortLevel = z.enum(['below minimum', 'below critical', 'run out', 'short of the end target']);
export type ShortLevel = Answer<typeof shortLevel>;

/** Surface words of the trade; damp uses the dry figures, unknown is the absence of a fresh report. */
export const surfaceState = z.enum(['dry', 'damp', 'soft', 'closed']);
export type SurfaceState = Answer<typeof surfaceState>;

export const limitName = z.enum([
  'closed',
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
  'type not approved',
  'unload or stay',
]);
export type LimitName = Answer<typeof limitName>;

export const balanceMomentName = z.enum(['ramp', 'zero fuel', 'take-off', 'landing']);
export type BalanceMomentName = Answer<typeof balanceMomentName>;

export const faultAnswer = z
  .strictObject({
    path: z.string().describe('Where, like `stripLimits[12].landingLb`; empty: the document as a whole.'),
    problem: z.string(),
    remedy: z.string().describe('What to do about it.'),
  })
  .meta({
    id: 'Fault',
    description: 'Something in a document that has to be put right, or that looks wrong and is worth a look.',
  });
