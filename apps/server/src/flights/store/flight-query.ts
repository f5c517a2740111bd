import { type FlightState, stateMeanings } from '@drumline/planning';
import { z } from 'zod';
import { pageQuery } from '../../http/page.js';

const kept = /^[^\p{Cc}\p{Cs}]{1,100}$/u;
const name = z.string().regex(kept, 'a name is 1 to 100 characters that can be written down');
const day = z.iso
  .date('a day is written YYYY-MM-DD')
  .regex(/^(19|20|21)/, 'a day is of the years 1900 to 2199');
const states = Object.keys(stateMeanings) as [FlightState, ...FlightState[]];

export const flightId = name;

export const reportId = z.uuid().toLowerCase();

export const flightReportsQuery = pageQuery.extend({ after: reportId.optional(), flight: name.optional() });

export type FlightReportsQuery = z.output<typeof flightReportsQuery>;

export const flightQuery = pageQuery.extend({
  after: z
    .string()
    .regex(
      /^(19|20|21)\d{2}-\d{2}-\d{2}\.[^\p{Cc}\p{Cs}]{1,100}$/u,
      '`after` is the `next` of the page before',
    )
    .refine((after) => z.iso.date().safeParse(after.slice(0, 10)).success, 'there is no such day')
    .optional(),
  from: day.optional(),
  until: day.optional(),
  state: z.enum(states).optional(),
  aircraft: name.optional(),
  pilot: name.optional(),
  needsDecision: z.enum(['true', 'false']).optional(),
});

export type FlightQuery = z.output<typeof flightQuery>;
