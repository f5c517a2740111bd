import type { Cents, Hours, Knots, Litres, NauticalMiles, Pounds } from '@drumline/units';
import { z } from 'zod';

// A plan is written by the program: figures are taken as they are, with their kind and brand only.
const figure = <Q extends number>() => z.number() as unknown as z.ZodType<Q, number>;

export const litres = figure<Litres>();
export const lb = figure<Pounds>();
export const hours = figure<Hours>();
export const kt = figure<Knots>();
export const nm = figure<NauticalMiles>();
export const cents = figure<Cents>();
export const count = z.number().int().nonnegative();
export const day = z.number().int().nonnegative();
export const isoDate = z.iso.date();
export const clockTime = z.string().regex(/^\d\d:\d\d$/);
export const place = z.string().min(1);

export const moneyParts = z.strictObject({
  flight: cents,
  fuel: cents,
  handling: cents,
  total: cents,
  litres,
  perLitre: z.number().nullable(),
});

export const shortLevel = z.enum(['below minimum', 'below critical', 'run out', 'short of the end target']);
