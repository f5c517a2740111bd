import type { z } from 'zod';

/** As it is sent: what is kept readonly here is taken apart by schemas that make lists of their own. */
type Sent<T> = unknown extends T
  ? T
  : T extends Date
    ? string
    : T extends string | number | boolean | null | undefined
      ? T
      : T extends readonly [infer One, infer Other]
        ? [Sent<One>, Sent<Other>]
        : T extends readonly (infer Item)[]
          ? Sent<Item>[]
          : { -readonly [K in keyof T]: Sent<T[K]> };

/**
 * What a page reads of an answer: `partOf<WeekAnswer>()(z.object({ ... }))`. It does not compile where the answer has no
 * such field, or one of another kind: the types of the answers are those that the server answers by.
 */
export const partOf =
  <Answer>() =>
  <Schema extends z.ZodType>(schema: Sent<Answer> extends z.input<Schema> ? Schema : never): Schema =>
    schema;
