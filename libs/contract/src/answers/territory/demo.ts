import { z } from 'zod';
import { instant } from '../field.js';

export const enteredAnswer = z
  .strictObject({
    movements: z.number(),
    flights: z.number(),
    plans: z.number(),
    changes: z
      .number()
      .describe('Of the territory: places, limits, tasks and rules that people have changed since.'),
  })
  .meta({
    id: 'Entered',
    description: 'What stands in the books since a demo was loaded. All of it goes with the demo.',
  });

export const demoStateAnswer = z
  .strictObject({
    canLoad: z.boolean().describe('The demo territory can be loaded: the ledger is empty.'),
    loaded: z
      .strictObject({
        at: instant,
        entered: enteredAnswer,
      })
      .describe('Absent: this is no demo.')
      .exactOptional(),
  })
  .meta({ id: 'DemoState' });
