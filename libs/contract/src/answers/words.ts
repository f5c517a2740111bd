import { z } from 'zod';
import { shortLevel } from '../plan/field.js';
import { legLimit } from '../plan/planned-flight-schema.js';
import { surfaceState as asSetUp } from '../scenario/place-schema.js';
import { standingState as asPlanned } from '../scenario/programme-schema.js';

/** State of a flight that a plan counts with. */
export const standingState = z.enum(asPlanned.options);

/** State of any flight; how it goes from one to the next stands in docs/flight-states.md. */
export const flightState = z.enum([
  ...standingState.options,
  'idea',
  'declined',
  'called off',
  'turned back',
  'ended elsewhere',
]);

export const flightKind = z.enum(['positioning', 'booked']);

/** Surface words of the trade; damp uses the dry figures, unknown is the absence of a fresh report. */
export const surfaceState = z.enum(asSetUp.options);

export const limitName = legLimit.shape.name;

export const balanceMomentName = z.enum(['ramp', 'zero fuel', 'take-off', 'landing']);

/** How the litres of a cache stand to its levels. */
export const cacheLevel = z.enum(['below minimum', 'below critical', 'enough']);

/** How far a figure of stock is to be trusted. */
export const confidence = z.enum(['high', 'medium', 'low']);

export { shortLevel };

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
