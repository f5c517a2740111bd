import { z } from 'zod';
import { hours, litres, wholeList } from '../field.js';

export const ownProgrammesAnswer = wholeList(
  z.strictObject({
    code: z.string(),
    name: z.string(),
  }),
).meta({ id: 'OwnProgrammes' });

export const ownTasksAnswer = wholeList(
  z.strictObject({
    date: z.string(),
    place: z.string(),
    hours: hours,
    litres: litres,
    note: z.string().nullable(),
  }),
).meta({ id: 'OwnTasks' });

export const ownLitresAnswer = wholeList(
  z.strictObject({
    at: z.string(),
    date: z.string().describe('At the territory.'),
    place: z.string(),
    into: z.string(),
    litres,
  }),
)
  .extend({ litres: z.number() })
  .meta({ id: 'OwnLitres' });
