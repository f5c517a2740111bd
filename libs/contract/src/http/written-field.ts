import type { Millilitres } from '@drumline/stock';
import type { Celsius, Kilograms } from '@drumline/units';
import { z } from 'zod';

// Fields of what people report. A database keeps no control character and no half
// of a surrogate pair: such text is refused here.
const kept = /^(?:[^\p{Cc}\p{Cs}]|[\t\r\n])*$/u;

const line = (longest: number) => (description: string, example: string) =>
  z
    .string()
    .trim()
    .min(1)
    .max(longest)
    .regex(kept, 'leave out the character that cannot be stored')
    .meta({ description, examples: [example] });

/** A number, a name, a code. */
export const shortText = line(100);
/** A sentence or two. */
export const longText = line(1000);

export const millilitres = (description: string, example: number) =>
  z
    .number()
    .int()
    .nonnegative()
    .max(1e9)
    .meta({ description, unit: 'mL', examples: [example] }) as unknown as z.ZodType<Millilitres, number>;

export const grossKg = (description: string, example: number) =>
  z
    .number()
    .nonnegative()
    .max(10_000)
    .meta({ description, unit: 'kg', examples: [example] }) as unknown as z.ZodType<Kilograms, number>;

export const degreesC = (description: string, example: number) =>
  z
    .number()
    .min(-60)
    .max(80)
    .meta({ description, unit: '°C', examples: [example] }) as unknown as z.ZodType<Celsius, number>;

export const drumCount = (description: string, example: number) =>
  z
    .number()
    .int()
    .nonnegative()
    .max(100_000)
    .meta({ description, unit: 'drums', examples: [example] });

const instantPattern = /^(19|20|21)\d\d-\d\d-\d\dT([01]\d|2[0-3]):[0-5]\d(:[0-5]\d(\.\d{3})?)?Z$/;

/** A moment as a phone or a page writes it down. */
export const moment = (description: string, example: string) =>
  z
    .string()
    .regex(instantPattern, {
      error: 'an instant is written like 2027-06-14T06:00Z, in UTC, from 1900 to 2199',
      abort: true,
    })
    .refine((text) => isDay(text), 'there is no such day')
    .meta({ description, unit: 'UTC', examples: [example] });

const isDay = (text: string): boolean => {
  const time = Date.parse(text);
  return !Number.isNaN(time) && new Date(time).toISOString().startsWith(text.slice(0, 10));
};

/** Who reports, when it happened and was written down, by which means. */
export const written = {
  happenedAt: moment('When it happened', '2027-06-14T07:20Z'),
  writtenAt: moment('When it was written down', '2027-06-14T07:25Z'),
  means: z
    .enum(['screen', 'phone', 'radio', 'paper'])
    .meta({ description: 'How it came to be written down', examples: ['phone'] }),
  by: shortText('Who reports it; absent: whoever sends it', 'A. Pilot').exactOptional(),
  witnesses: z.array(shortText('Name', 'strip helper')).max(20).readonly().default([]),
  note: longText('Anything else', 'bung weeping').exactOptional(),
};
