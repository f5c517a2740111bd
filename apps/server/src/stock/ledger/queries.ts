import { z } from 'zod';
import { pageQuery } from '../../http/page.js';

const line = (longest: number) =>
  z
    .string()
    .min(1)
    .max(longest)
    .regex(/^[^\p{Cc}\p{Cs}]*$/u, 'leave out the character that cannot be stored');
const text = line(100);
const entry = z
  .string()
  .regex(/^\d{1,15}$/, '`after` is the `next` of the page before')
  .optional();

const instant = z.iso.datetime({ error: 'an instant is written YYYY-MM-DDTHH:MM:SSZ' });

/** `from` and `until`: when it happened, the first moment and the first one after. */
export const movementsQuery = pageQuery.extend({
  after: entry,
  place: text.optional(),
  drum: text.optional(),
  flight: text.optional(),
  from: instant.optional(),
  until: instant.optional(),
});
export type MovementsQuery = z.output<typeof movementsQuery>;

/** `last`: how the number ends, as it is read off a drum; `view`: a page of the storekeeper's. */
export const drumsQuery = pageQuery.extend({
  after: text.optional(),
  last: text.optional(),
  place: text.optional(),
  view: z.enum(['held', 'open', 'empties', 'elsewhere']).optional(),
});
export type DrumsQuery = z.output<typeof drumsQuery>;

export const raisedQuery = pageQuery.extend({
  after: line(1000).optional(),
  state: z.enum(['open', 'seen', 'all']).default('open'),
});
export type RaisedQuery = z.output<typeof raisedQuery>;

export const closedCasesQuery = pageQuery.extend({ after: z.uuid().optional() });

export const drumNumber = text;
/** As it is stored: in small letters. */
export const movementId = z.uuid().toLowerCase();
