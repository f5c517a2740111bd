import { z } from 'zod';
import { type Answer, instant } from '../field.js';

export const paperEntryAnswer = z
  .strictObject({
    id: z.string(),
    source: z.enum(['flight report', 'movement', 'surface report']),
    means: z.enum(['radio', 'paper']),
    flight: z.string().nullable(),
    what: z.string(),
    happenedAt: instant,
    writtenAt: instant,
    enteredAt: instant,
    by: z.string().describe('Who said or wrote it.'),
    enteredBy: z.string().nullable(),
  })
  .meta({ id: 'PaperEntry', description: 'What somebody entered at the desk for a crew.' });

export const paperEntriesAnswer = z
  .strictObject({
    since: instant,
    items: z.array(paperEntryAnswer).describe('In the order in which they were written down.'),
    silence: z
      .strictObject({
        from: instant.nullable(),
        until: instant.nullable(),
      })
      .nullable()
      .describe(
        'From the last word that base had before the first of them was written on paper, to the next; null: none is.',
      ),
    next: z.null(),
  })
  .meta({ id: 'PaperEntries' });
export type PaperEntries = Answer<typeof paperEntriesAnswer>;
