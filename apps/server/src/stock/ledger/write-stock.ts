import type { Movement } from '@drumline/stock';
import type { EntityManager } from 'typeorm';
import type { Actor } from '../../audit/audit.service.js';
import { ask, prepared } from '../../database/prepared.js';
import type { StockRows } from '../figures/stock-rows.js';

/** A movement that is new to the ledger. */
interface Entered {
  readonly movement: Movement;
  readonly by: Actor;
}

/**
 * Writes the rows that are other than before, all in one statement, and so many at a time; the movement that they
 * follow from with the first of them. Returns it as the database keeps it.
 */
export const writeStock = async (
  transaction: EntityManager,
  rows: StockRows,
  entered: Entered | null = null,
): Promise<Movement | null> => {
  let kept: Movement | null = null;
  const lists = Object.values(rows) as readonly (readonly unknown[])[];
  const longest = Math.max(...lists.map(({ length }) => length));
  for (let at = 0; at === 0 || at < longest; at += atOnce) {
    const piece = Object.fromEntries(
      (Object.entries(rows) as [string, readonly unknown[]][]).map(([name, list]) => [
        name,
        list.slice(at, at + atOnce),
      ]),
    );
    const movements = at === 0 && entered !== null ? [entered.movement] : [];
    const values = [JSON.stringify({ ...piece, movements }), entered?.by.id];
    const [row] = await ask<{ readonly data: Movement }>(transaction, writeAll, values);
    kept ??= row?.data ?? null;
  }
  return kept;
};

const atOnce = 5000;

/** Throws everything away that follows from the ledger; the versions of the places go on from where they were. */
export const clearStock = async (transaction: EntityManager): Promise<void> => {
  for (const table of ['drums', 'drum_steps', 'counts', 'raised', 'batch_states'])
    await transaction.query(`delete from ${table}`);
  await transaction.query(`
    update place_balances set sealed_drums = 0, part_used_drums = 0, empty_drums = 0, book_millilitres = 0,
      version = version + 1`);
};

const removeDrums = `
  delete from drums where number = any(array(select jsonb_array_elements_text($1::jsonb -> 'drumsGone')))`;

const removeSteps = `
  delete from drum_steps using jsonb_to_recordset($1::jsonb -> 'stepsGone') as gone(drum text, length integer)
  where drum_steps.drum = gone.drum and step >= gone.length`;

const writeDrums = `
  insert into drums (number, place, data)
  select * from jsonb_to_recordset($1::jsonb -> 'drums') as drum(number text, place text, data jsonb)
  on conflict (number) do update set place = excluded.place, data = excluded.data`;

const writeSteps = `
  insert into drum_steps (drum, step, movement, from_at, until_at, place, content, millilitres)
  select * from jsonb_to_recordset($1::jsonb -> 'steps') as step(drum text, step integer, movement uuid, from_at timestamptz,
    until_at timestamptz, place text, content text, millilitres bigint)
  on conflict (drum, step) do update set movement = excluded.movement, from_at = excluded.from_at,
    until_at = excluded.until_at, place = excluded.place, content = excluded.content,
    millilitres = excluded.millilitres`;

const writeBatches = `
  insert into batch_states (batch, data)
  select state ->> 'batch', state from jsonb_array_elements($1::jsonb -> 'batches') as state
  on conflict (batch) do update set data = excluded.data, version = batch_states.version + 1`;

const writeCounts = `
  insert into counts (id, place, happened_at, written_at, stands, data)
  select * from jsonb_to_recordset($1::jsonb -> 'counts') as count(id uuid, place text, happened_at timestamptz,
    written_at timestamptz, stands boolean, data jsonb)
  on conflict (id) do update set stands = excluded.stands`;

const removeRaised = `
  delete from raised where id = any(array(select jsonb_array_elements_text($1::jsonb -> 'raisedGone')))`;

const writeRaised = `
  insert into raised (id, kind, drum, place, flight, data, raised_at)
  select * from jsonb_to_recordset($1::jsonb -> 'raised') as raised(id text, kind text, drum text, place text, flight text,
    data jsonb, raised_at timestamptz)
  on conflict (id) do update set place = excluded.place, flight = excluded.flight, data = excluded.data,
    raised_at = excluded.raised_at`;

const addToBalances = `
  insert into place_balances (place, sealed_drums, part_used_drums, empty_drums, book_millilitres)
  select balance ->> 'place', (balance ->> 'sealedDrums')::integer, (balance ->> 'partUsedDrums')::integer,
    (balance ->> 'emptyDrums')::integer, (balance ->> 'bookMillilitres')::bigint
  from jsonb_array_elements($1::jsonb -> 'balances') with ordinality as line(balance, position) order by position
  on conflict (place) do update set
    sealed_drums = place_balances.sealed_drums + excluded.sealed_drums,
    part_used_drums = place_balances.part_used_drums + excluded.part_used_drums,
    empty_drums = place_balances.empty_drums + excluded.empty_drums,
    book_millilitres = place_balances.book_millilitres + excluded.book_millilitres,
    version = place_balances.version + 1`;

/** `$2` is the account. */
export const insertMovements = `
  insert into movements (id, kind, happened_at, written_at, received_at, means, account_id, data)
  select (data ->> 'id')::uuid, data ->> 'kind', (data ->> 'happenedAt')::timestamptz,
    (data ->> 'writtenAt')::timestamptz, (data ->> 'receivedAt')::timestamptz, data ->> 'means', $2::uuid, data
  from jsonb_array_elements($1::jsonb -> 'movements') with ordinality as line(data, position) order by position`;

// No two of them touch one row, so they may go together.
const writeAll =
  prepared(`with entered as (${insertMovements} returning data), removed_drums as (${removeDrums}),
  removed_steps as (${removeSteps}), written_drums as (${writeDrums}), written_steps as (${writeSteps}),
  written_batches as (${writeBatches}), written_counts as (${writeCounts}), removed_raised as (${removeRaised}),
  written_raised as (${writeRaised}), added_to_balances as (${addToBalances})
  select data from entered`);
