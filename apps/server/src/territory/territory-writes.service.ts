import { isDeepStrictEqual } from 'node:util';
import type { Fault } from '@drumline/contract';
import { Injectable } from '@nestjs/common';
import type { EntityManager } from 'typeorm';
import { type Actor, AuditService } from '../audit/audit.service.js';
import { type Expected, staleVersion } from '../http/etag.js';
import { Problem } from '../http/problem.js';
import type { Thing } from './assemble.js';
import { changedFields } from './changed-fields.js';
import { type Entry, entryTable } from './entry.table.js';
import { notThere, oneAtATime, thingsIn, writeEntry } from './kept-entries.js';
import { type Kind, kindNamed } from './kinds.js';
import { newDoubts, refuseNewFaults } from './new-faults.js';
import { subjectOf } from './subject-of.js';

/** What somebody wants of one thing, having seen what version of it. */
export interface Change {
  readonly kind: Kind;
  readonly id: string;
  /** Null: the thing is taken out. */
  readonly data: unknown;
  readonly expected: Expected;
}

export type Put = Pick<Change, 'id' | 'data'>;

/** Many changes of one kind. */
export interface Puts {
  readonly kind: string;
  readonly lines: readonly Put[];
  /** Ids of what is taken out. */
  readonly gone: readonly string[];
}

export interface PutCounts {
  readonly added: number;
  readonly changed: number;
  readonly unchanged: number;
  readonly removed: number;
}

export interface PutAll {
  readonly counts: PutCounts;
  /** What looks wrong about these lines and did not before; it keeps nothing out. */
  readonly doubts: readonly Fault[];
}

/** Changes what people keep, after a look at the whole: what would not fit together is refused. */
@Injectable()
export class TerritoryWritesService {
  constructor(private readonly audit: AuditService) {}

  /** Makes or changes one thing. A repeat of a request that was done already is answered like the first. */
  async put(transaction: EntityManager, { kind, id, data, expected }: Change, by: Actor): Promise<Entry> {
    if (kind.idOf !== null && kind.idOf(data) !== id) throw otherName(kind, id, kind.idOf(data));
    await oneAtATime(transaction);
    const there = await transaction.findOneBy(entryTable, { kind: kind.name, id });
    if (there !== null && isDone(there, data, expected, by)) return there;
    refuseStale(kind, id, there, expected);
    const things = await thingsIn(transaction);
    refuseNewFaults(things, [...without(things, kind, id), { kind: kind.name, id, data }], { kind });
    const entry = await writeEntry(
      transaction,
      { kind: kind.name, id, data, removed: false },
      { before: there, by },
    );
    const before = there === null || there.removed ? null : there.data;
    await this.audit.record(
      transaction,
      by,
      before === null ? 'added' : 'changed',
      subjectOf(kind, id, data),
      {
        ...{ id, version: entry.version },
        ...(before === null ? {} : { changed: changedFields(before, data) }),
      },
    );
    return entry;
  }

  /**
   * Makes, changes or takes out many things of one kind, all or none of them; what is not among them stays. The paths
   * of faults and doubts begin with the place in `lines`, like `[4].hours`.
   */
  async putAll(transaction: EntityManager, { kind: name, lines, gone }: Puts, by: Actor): Promise<PutAll> {
    const kind = kindNamed(name);
    await oneAtATime(transaction);
    const there = await transaction.findBy(entryTable, { kind: kind.name });
    const before = new Map(there.map((entry) => [entry.id, entry]));
    const isSame = ({ id, data }: Put) => {
      const old = before.get(id);
      return old !== undefined && !old.removed && isDeepStrictEqual(old.data, data);
    };
    const things = await thingsIn(transaction);
    const ids = new Set([...lines.map(({ id }) => id), ...gone]);
    const kept = things.filter((thing) => thing.kind !== kind.name || !ids.has(thing.id));
    const after = [...kept, ...lines.map((line) => ({ kind: kind.name, ...line }))];
    const bodies = { kind, several: lines.length };
    refuseNewFaults(things, after, bodies);
    const doubts = newDoubts(things, after, bodies);
    const changes = lines.filter((line) => !isSame(line));
    for (const { id, data } of changes)
      await writeEntry(
        transaction,
        { kind: kind.name, id, data, removed: false },
        { before: before.get(id) ?? null, by },
      );
    const leaving = gone.flatMap((id) => before.get(id) ?? []).filter(({ removed }) => !removed);
    for (const entry of leaving)
      await writeEntry(transaction, { ...entry, removed: true }, { before: entry, by });
    const changed = changes.filter(({ id }) => before.get(id)?.removed === false).length;
    const counts = {
      added: changes.length - changed,
      changed,
      unchanged: lines.length - changes.length,
      removed: leaving.length,
    };
    await this.audit.record(transaction, by, 'brought in', `${kind.name} by CSV`, counts);
    return { counts, doubts: doubts.filter(({ path }) => path.startsWith('[')) };
  }

  /** Takes a thing out of the territory; its history stays. */
  async remove(transaction: EntityManager, { kind, id, expected }: Change, by: Actor): Promise<void> {
    await oneAtATime(transaction);
    const there = await transaction.findOneBy(entryTable, { kind: kind.name, id });
    if (there === null) throw notThere(kind, id);
    if (there.removed) return;
    refuseStale(kind, id, there, expected);
    const things = await thingsIn(transaction);
    refuseNewFaults(things, without(things, kind, id), { kind });
    await writeEntry(transaction, { ...there, removed: true }, { before: there, by });
    await this.audit.record(transaction, by, 'removed', subjectOf(kind, id, there.data), { id });
  }
}

const without = (things: readonly Thing[], kind: Kind, id: string): Thing[] =>
  things.filter((thing) => thing.kind !== kind.name || thing.id !== id);

const isDone = (there: Entry | null, data: unknown, expected: Expected, by: Actor): boolean => {
  if (there === null || there.removed || !isDeepStrictEqual(there.data, data)) return false;
  return expected === 'none yet' || (there.version === expected.version + 1 && there.changedBy === by.id);
};

const refuseStale = (kind: Kind, id: string, there: Entry | null, expected: Expected): void => {
  const current = there === null || there.removed ? null : there.version;
  if (current === (expected === 'none yet' ? null : expected.version)) return;
  throw staleVersion(`The ${kind.singular} ${id}`, current);
};

const otherName = (kind: Kind, id: string, named: string): Problem =>
  new Problem(
    'faults',
    `This ${kind.singular} is named ${named}, and the address says ${id}: use one name.`,
    [{ path: 'id', problem: `${id} is not ${named}.`, remedy: `Send it to /api/${kind.name}/${named}.` }],
  );
