import type { EntityManager } from 'typeorm';
import type { Actor } from '../audit/audit.service.js';
import { Problem } from '../http/problem.js';
import type { Thing } from './assemble.js';
import { type Entry, entryTable } from './entry.table.js';
import type { Kind } from './kinds.js';

/** Changes are rare, and each is checked against all the others: they take turns. */
export const oneAtATime = (transaction: EntityManager) =>
  transaction.query('select pg_advisory_xact_lock(872364003)');

export const thingsIn = (transaction: EntityManager): Promise<Thing[]> =>
  transaction.find(entryTable, {
    select: { kind: true, id: true, data: true },
    where: { removed: false },
    order: { position: 'ASC', id: 'ASC' },
  });

/** Writes a thing over the version before it; its history is kept by the table. */
export const writeEntry = async (
  transaction: EntityManager,
  entry: Pick<Entry, 'kind' | 'id' | 'data' | 'removed'> & { readonly position?: number },
  { before, by }: { readonly before: Entry | null; readonly by: Actor },
): Promise<Entry> => {
  const written: Entry = {
    ...entry,
    version: (before?.version ?? 0) + 1,
    position: entry.position ?? before?.position ?? (await nextPosition(transaction, entry.kind)),
    changedBy: by.id,
    changedAt: new Date(),
  };
  await transaction.upsert(entryTable, { ...written, data: written.data as object }, ['kind', 'id']);
  return written;
};

const nextPosition = async (transaction: EntityManager, kind: string): Promise<number> =>
  ((await transaction.maximum(entryTable, 'position', { kind })) ?? 0) + 1;

export const notThere = (kind: Kind, id: string): Problem =>
  new Problem('not-found', `There is no ${kind.singular} ${id}. Look for it in the list on Set-up.`);
