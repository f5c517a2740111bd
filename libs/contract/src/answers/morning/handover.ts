import { z } from 'zod';
import { instant } from '../field.js';

export const handoverItemAnswer = z
  .strictObject({
    kind: z.string(),
    words: z.string(),
    signed: z
      .strictObject({
        by: z.string(),
        at: instant,
        note: z.string().nullable(),
      })
      .nullable(),
  })
  .meta({ id: 'HandoverItem' });

export const handoverAnswer = z
  .strictObject({
    id: z.string(),
    at: instant,
    from: z.string().describe('Who hands over.'),
    fromAccount: z.string(),
    items: z.array(handoverItemAnswer),
    closed: z
      .strictObject({
        by: z.string(),
        at: instant,
      })
      .nullable()
      .describe('Null: not every item is signed for and the list is not taken over.'),
  })
  .meta({ id: 'Handover' });
