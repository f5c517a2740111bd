import { z } from 'zod';

/** The planning drum, out of the policy. */
export const policyDrumSchema = z.object({ data: z.object({ drum: z.object({ grossKg: z.number() }) }) });
