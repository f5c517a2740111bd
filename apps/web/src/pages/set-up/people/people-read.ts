import { roles } from '@drumline/contract';
import type { PersonAnswer } from '@drumline/contract/answers';
import { z } from 'zod';
import { partOf } from '../../../api/index.js';

export const personSchema = partOf<PersonAnswer>()(
  z.object({
    id: z.string(),
    version: z.number(),
    name: z.string(),
    fullName: z.string(),
    roles: z.array(z.enum(roles)),
    crew: z.string().nullable(),
    programmes: z.array(z.string()),
    disabled: z.boolean(),
    oneTimePassword: z.boolean(),
  }),
);
export type Person = z.output<typeof personSchema>;

export const passwordSchema = z.object({ oneTimePassword: z.string().nullable() });
