import { z } from 'zod';
import { type Answer, instant, permittedAct, role, wholeList } from '../field.js';

export const level = z.enum(['none', 'view', 'enter', 'decide']);

/** A condition under which a permission stands; the caller knows whether it holds. */
export const limit = z.enum([
  'from now, inside the week',
  'inside the week',
  'as commander',
  'by radio',
  'at base',
  'one drum',
  'as a draft',
  'export',
]);

export const meAnswer = z
  .strictObject({
    id: z.string(),
    name: z.string(),
    fullName: z.string(),
    roles: z.array(role),
    crew: z.string().nullable(),
    programmes: z.array(z.string()),
    mustChangePassword: z.boolean(),
    may: z.array(
      z.strictObject({
        level: level,
        own: z.boolean().describe('Own flights, duties or programme only.'),
        second: z.boolean().describe('A second person has to agree to whatever is more than a look.'),
        limit: limit.nullable().describe('Binds whatever is more than a look.'),
        act: permittedAct,
      }),
    ),
    csrfToken: z.string(),
  })
  .meta({ id: 'MeAnswer' });
export type MeAnswer = Answer<typeof meAnswer>;

export const mySessionsAnswer = wholeList(
  z.strictObject({
    id: z.string(),
    device: z.string(),
    createdAt: instant,
    lastSeenAt: instant,
    expiresAt: instant,
    thisOne: z.boolean(),
  }),
).meta({ id: 'MySessions' });
