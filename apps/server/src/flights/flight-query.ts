import type { FlightState } from '@drumline/planning';
import { stateMeanings } from '@drumline/planning';
import { z } from 'zod';
import { pageQuery } from '../http/page.js';

const day = z.iso.date('a day is written YYYY-MM-DD');
const states = Object.keys(stateMeanings) as [FlightState, ...FlightState[]];

export const flightQuery = pageQuery.extend({
  after: z
    .string()
    .regex(/^\d{4}-\d{2}-\d{2}\..{1,50}$/, '`after` is the `next` of the page before')
    .optional(),
  from: day.optional(),
  until: day.optional(),
  state: z.enum(states).optional(),
  aircraft: z.string().min(1).max(50).optional(),
  pilot: z.string().min(1).max(50).optional(),
  needsDecision: z.enum(['true', 'false']).optional(),
});

export type FlightQuery = z.output<typeof flightQuery>;
