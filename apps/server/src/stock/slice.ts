import type { Movement, Subjects } from '@drumline/stock';
import type { EntityManager } from 'typeorm';

interface Row {
  readonly data: Movement;
}

interface SliceOptions {
  /** The drums with all numbers ever joined to them, where that is known. */
  readonly joined?: readonly string[];
  /** Movements that are to be in it in any case. */
  readonly known?: readonly Movement[];
  /** Called with the batches of the drums before their holds are read. */
  readonly beforeHolds?: (batches: readonly string[]) => Promise<void>;
}

/**
 * Every movement that a reading of some subjects needs: of the drums, of every number ever joined to them, holds of
 * their batches, counts of the place, and whatever corrects any of these. A batch brings all drums that ever held it.
 */
export const loadSlice = async (
  transaction: EntityManager,
  { drums, batch, place }: Subjects,
  { known = [], joined, beforeHolds }: SliceOptions = {},
): Promise<Movement[]> => {
  const ofBatch = batch === null ? [] : await numbersOfBatch(transaction, batch);
  const numbers = joined ?? (await joinedNumbers(transaction, [...drums, ...ofBatch]));
  const ofDrums = numbers.length === 0 ? [] : await rows(transaction, movementsOfDrums, [numbers]);
  const batches = batchesIn(ofDrums, batch);
  await beforeHolds?.(batches);
  const holds = batches.length === 0 ? [] : await rows(transaction, holdsOfBatches, [batches]);
  const counts = place === null ? [] : await rows(transaction, countsOfPlace, [place]);
  const found = new Map(
    [...known, ...ofDrums, ...holds, ...counts].map((movement) => [movement.id, movement]),
  );
  return [...(await withCorrections(transaction, found)).values()];
};

const batchesIn = (movements: readonly Movement[], more: string | null): string[] => {
  const named = movements.flatMap((movement) => ('batch' in movement ? [movement.batch] : []));
  return [...new Set(more === null ? named : [...named, more])].sort();
};

/** Draws of the place of a draw so near in time that they may be the same one. */
export const drawsAround = (transaction: EntityManager, draw: Movement | undefined): Promise<Movement[]> =>
  draw?.kind === 'drawn'
    ? rows(
        transaction,
        `select data from movements where kind = 'drawn' and place = $1
         and happened_at between $2::timestamptz - interval '2 hours' and $2::timestamptz + interval '2 hours'`,
        [draw.place, draw.happenedAt],
      )
    : Promise.resolve([]);

/** The numbers with all those that joins have ever linked to them, whether or not the joins stand; sorted. */
export const joinedNumbers = async (
  transaction: EntityManager,
  numbers: readonly string[],
): Promise<string[]> => {
  const all = new Set(numbers);
  for (let size = -1; size !== all.size && all.size > 0; ) {
    size = all.size;
    const joins = await rows(
      transaction,
      `select data from movements where kind = 'joined' and drum = any($1)
       union all select data from movements where kind = 'joined' and other_drum = any($1)`,
      [[...all]],
    );
    for (const join of joins) if (join.kind === 'joined') all.add(join.provisional).add(join.drum);
  }
  return [...all].sort();
};

/** A movement by its id, with the one that it corrects, and so on. */
export const correctedBy = async (
  transaction: EntityManager,
  movement: Movement,
): Promise<Map<string, Movement>> => {
  const found = new Map([[movement.id, movement]]);
  for (let at: Movement | undefined = movement; at?.kind === 'corrected' && !found.has(at.corrects); ) {
    at = (await rows(transaction, 'select data from movements where id = $1', [at.corrects]))[0];
    if (at !== undefined) found.set(at.id, at);
  }
  return found;
};

const withCorrections = async (
  transaction: EntityManager,
  found: Map<string, Movement>,
): Promise<Map<string, Movement>> => {
  for (let ids = [...found.keys()]; ids.length > 0; ) {
    const corrections = await rows(transaction, 'select data from movements where corrects = any($1)', [ids]);
    const added = corrections.filter(({ id }) => !found.has(id));
    for (const correction of added) found.set(correction.id, correction);
    ids = added.map(({ id }) => id);
  }
  return found;
};

const numbersOfBatch = async (transaction: EntityManager, batch: string): Promise<string[]> => {
  const found = await rows(transaction, 'select data from movements where batch = $1', [batch]);
  return found.flatMap((movement) => [
    ...('drum' in movement ? [movement.drum] : []),
    ...(movement.kind === 'transferred' ? [movement.into] : []),
  ]);
};

const movementsOfDrums = `
  select data from movements where drum = any($1) union all select data from movements where other_drum = any($1)`;
const holdsOfBatches = 'select data from movements where held_batch = any($1)';
const countsOfPlace = `select data from movements where kind = 'counted' and place = $1`;

const rows = async (
  transaction: EntityManager,
  sql: string,
  parameters: readonly unknown[],
): Promise<Movement[]> =>
  (await transaction.query<readonly Row[]>(sql, [...parameters])).map(({ data }) => data);
