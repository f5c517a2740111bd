import type { Movement, Subjects } from '@drumline/stock';
import type { EntityManager } from 'typeorm';
import { joinedNumbers } from './slice.js';

/** Keys of PostgreSQL's advisory locks: two numbers, the first is ours. */
const stockLock = 872_364_010;

/** Whoever makes the stock anew goes alone; whoever appends goes with others, see takeTurns. */
export const goAlone = (transaction: EntityManager) =>
  transaction.query('select pg_advisory_xact_lock($1, 0)', [stockLock]);

/** A movement and a correction of it go one after the other: either sees the other. */
export const takeCorrected = async (transaction: EntityManager, movement: Movement): Promise<void> => {
  if (movement.kind === 'corrected') await take(transaction, idsOf(movement));
};

/**
 * One after the other: movements of one drum, counts and draws of one place, holds of one batch. Drums first, then
 * places, then batches, so that no two wait for each other. Returns the drums with all numbers ever joined to them.
 * `root` is what a correction is about in the end.
 */
export const takeTurns = async (
  transaction: EntityManager,
  movement: Movement,
  root: Movement,
  { drums, batch, place }: Subjects,
): Promise<readonly string[]> => {
  const ofPlace = place ?? (root.kind === 'drawn' ? root.place : null);
  const rest = [
    ...(ofPlace === null ? [] : [`place ${ofPlace}`]),
    ...(batch === null ? [] : [`batch ${batch}`]),
  ];
  let numbers = await joinedNumbers(transaction, drums);
  await take(transaction, [...idsOf(movement), ...numbers.map(drumKey), ...rest]);
  // A join that came in meanwhile makes the group larger: then the others are taken as well.
  for (let taken: readonly string[] = []; taken.length < numbers.length; ) {
    const more = numbers.filter((number) => !taken.includes(number));
    if (taken.length > 0) await take(transaction, more.map(drumKey));
    taken = numbers;
    numbers = await joinedNumbers(transaction, drums);
  }
  return numbers;
};

const drumKey = (number: string): string => `drum ${number}`;

const idsOf = (movement: Movement): string[] => {
  const ids = movement.kind === 'corrected' ? [movement.id, movement.corrects] : [movement.id];
  return ids.sort().map((id) => `movement ${id}`);
};

/** A drum goes on while no hold of its batches is being written. */
export const waitForHolds = async (transaction: EntityManager, batches: readonly string[]): Promise<void> => {
  if (batches.length === 0) return;
  await transaction.query(
    'select pg_advisory_xact_lock_shared($1, hashtext(key)) from unnest($2::text[]) as key',
    [stockLock, batches.map((batch) => `batch ${batch}`)],
  );
};

/** In this order, and beside it the part in the whole that goAlone waits for. */
const take = (transaction: EntityManager, keys: readonly string[]): Promise<unknown> =>
  transaction.query(
    `select pg_advisory_xact_lock_shared($1, 0)
     union all select pg_advisory_xact_lock($1, hashtext(key)) from unnest($2::text[]) as key`,
    [stockLock, keys],
  );
