import { z } from 'zod';

/** Query of every list: at most `limit` items after the place where the last page ended. */
export const pageQuery = z.strictObject({
  limit: z
    .string()
    .regex(/^\d{1,3}$/, 'a limit is a whole number from 1 to 500')
    .transform(Number)
    .refine((limit) => limit >= 1 && limit <= 500, 'a limit is a whole number from 1 to 500')
    .default(100),
  after: z.string().min(1).max(200).optional(),
});

export type PageQuery = z.output<typeof pageQuery>;

export interface Page<T> {
  readonly items: readonly T[];
  /** Give it as `after` to read on; null: this was the last page. */
  readonly next: string | null;
}

/** Read `limit + 1` rows, and this says whether there is more. */
export const pageOf = <T>(rows: readonly T[], limit: number, placeOf: (row: T) => string): Page<T> => {
  const items = rows.slice(0, limit);
  const last = items.at(-1);
  return { items, next: rows.length > limit && last !== undefined ? placeOf(last) : null };
};

/** Type of an answer that is JSON text already. */
export const writtenOut = 'application/json; charset=utf-8';
