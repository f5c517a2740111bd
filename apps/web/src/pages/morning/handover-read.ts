import { z } from 'zod';

const signedSchema = z.object({ by: z.string(), at: z.string(), note: z.string().nullable() });

export type Signed = z.output<typeof signedSchema>;

/** A list that one dispatcher hands to the next; `closed` null: nobody has taken it over yet. */
export const handoverSchema = z.object({
  id: z.string(),
  at: z.string(),
  from: z.string(),
  fromAccount: z.string(),
  items: z.array(z.object({ kind: z.string(), words: z.string(), signed: signedSchema.nullable() })),
  closed: z.object({ by: z.string(), at: z.string() }).nullable(),
});

export type Handover = z.output<typeof handoverSchema>;

/** Items that nobody has signed for, with the number that they are signed by. */
export const unreadOf = ({
  items,
}: Handover): readonly { readonly number: number; readonly words: string }[] =>
  items.flatMap(({ words, signed }, index) => (signed === null ? [{ number: index + 1, words }] : []));
