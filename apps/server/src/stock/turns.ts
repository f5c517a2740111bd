import type { Movement, Subjects } from '@drumline/stock';
import type { EntityManager } from 'typeorm';
import { joinedNumbers } from './slice.js';

/** Keys of PostgreSQL's advisory locks: two numbers, the first is ours. */
const stockLock = 872_364_010;

/**
 * Whoever appends goes in with the others; whoever makes the stock anew goes alone. A movement and a correction of it
 * go one after the other.
 */
export const goWithOthers = async (transaction: EntityManager, movement: Movement): Promise<void> => {
  await transaction.query('select pg_advisory_xact_lock_shared($1, 0)', [stockLock]);
  const ids = movement.kind === 'corrected' ? [movement.id, movement.corrects] : [movement.id];
  await take(
    transaction,
    'pg_advisory_xact_lock',
    ids.sort().map((id) => `movement ${id}`),
  );
};

export const goAlone = (transaction: EntityManager) =>
  transaction.query('select pg_advisory_xact_lock($1, 0)', [stockLock]);

/**
 * One after the other: movements of one drum, counts and draws of one place, holds of one batch. Drums first, then
 * places, then batches, so that no two wait for each other. Returns the drums with all numbers ever joined to them.
 */
export const takeTurns = async (
  transaction: EntityManager,
  movement: Movement,
  { drums, batch, place }: Subjects,
): Promise<readonly string[]> => {
  const numbers = await takeDrums(transaction, drums);
  const places = place ?? (movement.kind === 'drawn' ? movement.place : null);
  await take(transaction, 'pg_advisory_xact_lock', [
    ...(places === null ? [] : [`place ${places}`]),
    ...(batch === null ? [] : [`batch ${batch}`]),
  ]);
  return numbers;
};

/** A drum goes on while no hold of its batches is being written. */
export const waitForHolds = (transaction: EntityManager, batches: readonly string[]): Promise<void> =>
  take(
    transaction,
    'pg_advisory_xact_lock_shared',
    batches.map((batch) => `batch ${batch}`),
  );

/** A join that came in meanwhile makes the group larger: then the rest is taken as well. */
const takeDrums = async (
  transaction: EntityManager,
  drums: readonly string[],
): Promise<readonly string[]> => {
  const taken = new Set<string>();
  for (;;) {
    const numbers = await joinedNumbers(transaction, drums);
    const more = numbers.filter((number) => !taken.has(number));
    if (more.length === 0) return numbers;
    for (const number of more) taken.add(number);
    await take(
      transaction,
      'pg_advisory_xact_lock',
      more.map((number) => `drum ${number}`),
    );
  }
};

const take = async (
  transaction: EntityManager,
  lock: 'pg_advisory_xact_lock' | 'pg_advisory_xact_lock_shared',
  keys: readonly string[],
): Promise<void> => {
  if (keys.length === 0) return;
  await transaction.query(`select ${lock}($1, hashtext(key)) from unnest($2::text[]) as key`, [
    stockLock,
    keys,
  ]);
};
