import { z } from 'zod';

/** Cents and litres. */
export const moneySchema = z.object({
  flight: z.number(),
  fuel: z.number(),
  handling: z.number(),
  total: z.number(),
  litres: z.number(),
  perLitre: z.number().nullable(),
});
