import { z } from 'zod';
import { instant } from '../field.js';

export const notSeenAnswer = z
  .strictObject({
    person: z.string(),
    device: z.string(),
    lastSeenAt: instant,
  })
  .meta({ id: 'NotSeen' });

/** How many could be told by a phone at all. */
export const peopleWithDevice = z
  .number()
  .describe('Of the field, with a device that is signed in; 0: the radio only.');
