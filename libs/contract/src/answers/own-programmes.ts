import { z } from 'zod';
import { type Answer, hours, litres, wholeList } from './field.js';

export const ownProgrammesAnswer = wholeList(
  z.strictObject({
    code: z.string(),
    name: z.string(),
  }),
).meta({ id: 'OwnProgrammes' });
export type OwnProgrammes = Answer<typeof ownProgrammesAnswer>;

export const ownTasksAnswer = wholeList(
  z.strictObject({
    date: z.string(),
    place: z.string(),
    hours: hours,
    litres: litres,
    note: z.string().nullable(),
  }),
).meta({ id: 'OwnTasks' });
export type OwnTasks = Answer<typeof ownTasksAnswer>;

export const ownLitresAnswer = z
  .strictObject({
    next: z.null(),
    litres: z.number(),
    items: z.array(
      z.strictObject({
        at: z.string(),
        place: z.string(),
        into: z.string(),
        litres: litres,
      }),
    ),
  })
  .meta({ id: 'OwnLitres' });
export type OwnLitres = Answer<typeof ownLitresAnswer>;
