import type { Movement, Subjects } from '@drumline/stock';
import type { EntityManager } from 'typeorm';
import { ask, prepared } from '../../database/prepared.js';
import { joinedNumbers, type Slice } from '../figures/slice.js';

/** Keys of PostgreSQL's advisory locks: two numbers, the first is ours. */
const stockLock = 872_364_010;

/** Whoever makes the stock anew goes alone; whoever appends goes with others, see takeTurns. */
export const goAlone = (transaction: EntityManager) =>
  transaction.query('select pg_advisory_xact_lock($1, 0)', [stockLock]);

/** A movement and a correction of it go one after the other: either sees the other. */
export const takeCorrected = async (transaction: EntityManager, movement: Movement): Promise<void> => {
  if (movement.kind === 'corrected') await take(transaction, { ids: idsOf(movement) });
};

/**
 * One after the other: movements of one drum, counts and draws of one place, holds of one batch; and a drum goes on
 * while no hold of its batches is being written. Drums first, then places, then batches, so that no two wait for each
 * other. `root` is what a correction is about in the end. Says of what has been read since whether its turn was taken:
 * if not, something was joined or filled meanwhile, and both are to be done again.
 */
export const takeTurns = async (
  transaction: EntityManager,
  { movement, root }: { readonly movement: Movement; readonly root: Movement },
  { drums, batch, place }: Subjects,
): Promise<(read: Slice) => boolean> => {
  const ofPlace = place ?? (root.kind === 'drawn' ? root.place : null);
  const taken = await take(transaction, { ids: idsOf(movement), drums, place: ofPlace, batch });
  if (batch !== null) return () => true; // a hold goes alone for its batch, and drums wait for it
  return ({ numbers, batches }) =>
    numbers.every((number) => taken.has(`drum ${number}`)) &&
    batches.every((each) => taken.has(`batch ${each}`));
};

const idsOf = (movement: Movement): string[] =>
  movement.kind === 'corrected' ? [movement.id, movement.corrects] : [movement.id];

interface Wanted {
  readonly ids: readonly string[];
  readonly drums?: readonly string[];
  readonly place?: string | null;
  readonly batch?: string | null;
}

const take = async (
  transaction: EntityManager,
  { ids, drums = [], place = null, batch = null }: Wanted,
): Promise<ReadonlySet<string>> => {
  const rows = await ask<{ readonly key: string }>(transaction, takeSql, [
    stockLock,
    ids,
    drums,
    place,
    batch,
  ]);
  return new Set(rows.map(({ key }) => key));
};

/** In this order; before it the part in the whole that goAlone waits for. */
const takeSql = prepared(`
  with recursive ${joinedNumbers('select unnest($3::text[])')},
  batches as (
    select batch from movements where drum = any(array(select number from numbers)) and batch is not null
    union
    select batch from movements where other_drum = any(array(select number from numbers)) and batch is not null),
  wanted as (
    select 1 as turn, 'movement ' || id as key, false as together from unnest($2::text[]) as id
    union all select 2, 'drum ' || number, false from numbers
    union all select 3, 'place ' || $4::text, false where $4::text is not null
    union all select 4, 'batch ' || $5::text, false where $5::text is not null
    union all select 4, 'batch ' || batch, true from batches where $5::text is null),
  ordered as materialized (select key, together from wanted order by turn, key)
  select '' as key, pg_advisory_xact_lock_shared($1, 0)
  union all
  select key, case when together then pg_advisory_xact_lock_shared($1, hashtext(key))
    else pg_advisory_xact_lock($1, hashtext(key)) end
  from ordered`);
