import { z } from 'zod';
import { clockTime, instant, isoDate } from '../field.js';
import { flightState, shortLevel } from '../words.js';

/** What every list of flights shows of one. */
export const flightInShort = {
  id: z.string(),
  state: flightState,
  version: z.number(),
  needsDecision: z.string().nullable(),
  date: isoDate,
  departs: clockTime,
  aircraft: z.string(),
  route: z.array(z.string()),
};

/** What was done to it last, by whom. */
export const flightLastDone = {
  lastAct: z.string(),
  changedAt: instant,
  changedByName: z.string(),
};

/** The cache that a flight keeps from falling short, and the first day of it. */
export const protectedCache = z.strictObject({ place: z.string(), date: isoDate, level: shortLevel });

/** Of a booked flight it is worked out with every look and stands nowhere: its cause sets it and takes it away. */
export const bookedNeedsDecision = z
  .string()
  .nullable()
  .describe('What forbids it as it is booked, by the facts of the moment; null: nothing does.');
