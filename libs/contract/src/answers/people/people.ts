import { z } from 'zod';
import { type Answer, instant, role } from '../field.js';

export const personAnswer = z
  .strictObject({
    id: z.string(),
    name: z.string().describe('Typed at sign-in; lower case.'),
    fullName: z.string(),
    roles: z.array(role),
    crew: z
      .string()
      .nullable()
      .describe('Whose flights and duties are "own": a pilot or a helicopter of the territory.'),
    programmes: z.array(z.string()).describe('Whose programme is "own", for a customer\'s field leader.'),
    oneTimePassword: z.boolean(),
    disabled: z.boolean(),
    version: z.number(),
    createdAt: instant,
  })
  .meta({ id: 'PersonAnswer' });
export type PersonAnswer = Answer<typeof personAnswer>;

export const writtenPersonAnswer = personAnswer
  .extend({ oneTimePassword: z.string().nullable().describe('Null: none was made.') })
  .meta({ id: 'WrittenPerson' });

export const oneTimePasswordAnswer = z
  .strictObject({
    oneTimePassword: z.string(),
  })
  .meta({ id: 'OneTimePassword' });
