import { z } from 'zod';

const kept = /^(?:[^\p{Cc}\p{Cs}]|[\t\r\n])*$/u;
const words = (longest: number, description: string, example: string) =>
  z
    .string()
    .trim()
    .min(1)
    .max(longest)
    .regex(kept, 'leave out the character that cannot be stored')
    .meta({ description, examples: [example] });

const kinds = ['open decision', 'flight away', 'not heard from', 'dispute', 'entered late', 'said'] as const;

/** As the outgoing person hands it over: the list as it read then, and what they add. */
export const handoverSchema = z
  .strictObject({
    items: z
      .array(
        z
          .strictObject({
            kind: z.enum(kinds).meta({ description: 'What sort of thing it is' }),
            words: words(500, 'The item as it is read out', 'F05 needs a decision: XLOR is soft.'),
          })
          .meta({ id: 'HandoverItem', description: 'One thing that goes over to the next person' }),
      )
      .min(1)
      .max(200)
      .readonly(),
  })
  .meta({ id: 'Handover', description: 'A handover list; it is signed for item by item' });

export type HandoverBody = z.output<typeof handoverSchema>;

export const signatureSchema = z
  .strictObject({
    note: words(500, 'What the incoming person says to it', 'will call at 07:00').exactOptional(),
  })
  .meta({ id: 'HandoverSignature', description: 'The incoming person has heard an item' });

export type SignatureBody = z.output<typeof signatureSchema>;
