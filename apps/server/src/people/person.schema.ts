import { roles } from '@drumline/contract';
import { z } from 'zod';

/** What set-up writes of a person. The password is the person's own. */
export const personSchema = z.strictObject({
  name: z
    .string()
    .regex(/^[a-z0-9][a-z0-9._-]{1,49}$/, 'a sign-in name is 2 to 50 small letters, digits, dots, dashes')
    .meta({ description: 'Sign-in name', examples: ['m.okoro'] }),
  fullName: z.string().min(1).max(200),
  roles: z.array(z.enum(roles)).min(1),
  crew: z
    .string()
    .min(1)
    .nullable()
    .default(null)
    .meta({ description: 'Pilot or helicopter whose flights and duties are their own', examples: ['FW1'] }),
  programmes: z.array(z.string().min(1)).default([]).meta({ description: 'Programmes that are their own' }),
  disabled: z.boolean().default(false),
});

export type Person = z.output<typeof personSchema>;
