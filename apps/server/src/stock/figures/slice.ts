import type { Movement, Subjects } from '@drumline/stock';
import type { EntityManager } from 'typeorm';
import { ask, prepared } from '../../database/prepared.js';

interface Row {
  readonly data: Movement;
}

/** Movements that a reading of some subjects needs, and the subjects that turned out to belong to them. */
export interface Slice {
  readonly movements: readonly Movement[];
  /** The drums with all numbers ever joined to them. */
  readonly numbers: readonly string[];
  /** Whatever these drums ever held. */
  readonly batches: readonly string[];
}

interface SliceOptions {
  /** Movements that are to be in it in any case, with what corrects them. */
  readonly ids?: readonly string[];
  /** Draws are in it that may be the same one as this. */
  readonly alike?: Movement | undefined;
}

/**
 * Every movement that a reading of some subjects needs: of the drums, of every number ever joined to them, holds of
 * their batches, counts of the place, and whatever corrects any of these. A batch brings all drums that ever held it.
 * One statement, so that all of it is of one moment.
 */
export const loadSlice = async (
  manager: EntityManager,
  { drums, batch, place }: Subjects,
  { ids = [], alike }: SliceOptions = {},
): Promise<Slice> => {
  const draw = alike?.kind === 'drawn' ? alike : undefined;
  const [found] = await ask<Slice>(manager, sliceSql, [
    ids,
    drums,
    batch,
    place,
    ...[draw?.place, draw?.happenedAt, draw?.millilitres],
  ]);
  const byId = new Map(found!.movements.map((movement) => [movement.id, movement]));
  return { ...found!, movements: [...byId.values()] };
};

/** A movement by its id, with the one that it corrects, and so on. */
export const correctedBy = async (
  manager: EntityManager,
  movement: Movement,
): Promise<Map<string, Movement>> => {
  const found = new Map([[movement.id, movement]]);
  for (let at: Movement | undefined = movement; at?.kind === 'corrected' && !found.has(at.corrects); ) {
    const rows: readonly Row[] = await ask(manager, byIdSql, [at.corrects]);
    at = rows[0]?.data;
    if (at !== undefined) found.set(at.id, at);
  }
  return found;
};

const byIdSql = prepared('select data from movements where id = $1');

/** `seed`: a query of numbers. With them all those that joins have ever linked to them, whether or not the joins stand. */
export const joinedNumbers = (seed: string): string => `numbers (number) as (
  ${seed}
  union
  select linked.number from numbers cross join lateral (
    select other_drum as number from movements where kind = 'joined' and drum = numbers.number
    union all
    select drum from movements where kind = 'joined' and other_drum = numbers.number
  ) as linked)`;

const sliceSql = prepared(`
  with recursive ${joinedNumbers(`
    select number from (select unnest($2::text[]) as number
      union all select drum from movements where batch = $3::text
      union all select other_drum from movements where batch = $3::text) as named where number is not null`)},
  of_drums as (
    select id, batch, data from movements where drum = any(array(select number from numbers))
    union all select id, batch, data from movements where other_drum = any(array(select number from numbers))),
  batches as (
    select batch from of_drums where batch is not null union select $3::text where $3::text is not null),
  found as (
    select id, data from of_drums
    union all select id, data from movements where held_batch = any(array(select batch from batches))
    union all select id, data from movements where kind = 'counted' and place = $4::text
    union all select id, data from movements where id = any($1::uuid[])
    union all select id, data from movements where kind = 'drawn' and place = $5::text
      and happened_at between $6::timestamptz - interval '2 hours' and $6::timestamptz + interval '2 hours'
      and data -> 'millilitres' = to_jsonb($7::bigint)),
  corrected (id) as (
    select id from (select id from found union all select unnest($1::uuid[])) as known
    union
    select movements.id from movements join corrected on movements.corrects = corrected.id),
  corrections as (select data from movements where corrects = any(array(select id from corrected)))
  select (select coalesce(json_agg(number), '[]') from numbers) as numbers,
    (select coalesce(json_agg(batch), '[]') from batches) as batches,
    (select coalesce(json_agg(data), '[]')
     from (select data from found union all select data from corrections) as every_one) as movements`);
