import { isDeepStrictEqual } from 'node:util';
import { type Fault, parseScenario } from '@drumline/contract';
import type { Scenario } from '@drumline/planning';
import { Injectable } from '@nestjs/common';
import { DataSource, type EntityManager, MoreThan } from 'typeorm';
import { type Actor, AuditService } from '../audit/audit.service.js';
import { type Expected, staleVersion } from '../http/etag.js';
import { type Page, type PageQuery, pageOf } from '../http/page.js';
import { Problem } from '../http/problem.js';
import { assemble, type Thing, withEveryDay, withinHorizon } from './assemble.js';
import { type Entry, entryTable } from './entry.table.js';
import { type Kind, kindNamed } from './kinds.js';
import { subjectOf } from './subject-of.js';
import { thingsOf } from './things-of.js';

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

export type Horizon = Partial<Pick<Scenario, 'days' | 'offeredDays'>>;

/** What people keep of the territory: places, limits, aircraft, crews, caches, programme, rules. */
@Injectable()
export class TerritoryService {
  constructor(
    private readonly database: DataSource,
    private readonly audit: AuditService,
  ) {}

  /** `crew`: only what is that crew's own; null: everybody's. */
  async list(kind: Kind, crew: string | null, { limit, after }: PageQuery): Promise<Page<Entry>> {
    if (crew !== null) {
      const all = await this.database.getRepository(entryTable).find({
        where: { kind: kind.name, removed: false },
        order: { id: 'ASC' },
      });
      const own = all.filter(
        ({ id, data }) => kind.crewOf(data) === crew && (after === undefined || id > after),
      );
      return pageOf(own, limit, ({ id }) => id);
    }
    const rows = await this.database.getRepository(entryTable).find({
      where: { kind: kind.name, removed: false, ...(after === undefined ? {} : { id: MoreThan(after) }) },
      order: { id: 'ASC' },
      take: limit + 1,
    });
    return pageOf(rows, limit, ({ id }) => id);
  }

  async get(kind: Kind, id: string): Promise<Entry> {
    const entry = await this.database
      .getRepository(entryTable)
      .findOneBy({ kind: kind.name, id, removed: false });
    if (entry === null) throw notThere(kind, id);
    return entry;
  }

  /** Every thing of a kind, in the order of the document. */
  all(kind: string): Promise<readonly Entry[]> {
    return this.database.getRepository(entryTable).find({
      where: { kind, removed: false },
      order: { position: 'ASC', id: 'ASC' },
    });
  }

  isPlace(code: string): Promise<boolean> {
    return this.database.getRepository(entryTable).existsBy({ kind: 'places', id: code, removed: false });
  }

  /** By kind: every id that was ever there, taken out since or not. */
  async everNamed(): Promise<ReadonlyMap<string, readonly string[]>> {
    const rows: readonly { readonly kind: string; readonly ids: readonly string[] }[] =
      await this.database.query(
        'select kind, array_agg(id order by id) as ids from territory_entries group by kind',
      );
    return new Map(rows.map(({ kind, ids }) => [kind, ids]));
  }

  /**
   * The whole of it at a moment, in the order of the first import; part of a scenario, see assemble. `horizon`: looked
   * further ahead, or less far, than the territory is set.
   */
  async everything(now: Date, horizon: Horizon = {}): Promise<Scenario> {
    const things = await thingsIn(this.database.manager);
    const missing = ['settings', 'policy'].filter((name) => things.every(({ kind }) => kind !== name));
    if (missing.length === 0) return withinHorizon({ ...assemble(things, now), ...horizon });
    throw new Problem(
      'not-set-up',
      `This is made from the territory, which has no ${missing.join(' and no ')} yet. Set-up says step by step what a first plan needs.`,
    );
  }

  /** The same where settings or policy are not there yet: then it is no whole scenario, and parseScenario says so. */
  async asFarAsItGoes(now: Date): Promise<Scenario> {
    const kept = assemble(await thingsIn(this.database.manager), now);
    return kept.days === undefined ? kept : withinHorizon(kept);
  }

  /** Makes or changes one thing. A repeat of a request that was done already is answered like the first. */
  async put(transaction: EntityManager, { kind, id, data, expected }: Change, by: Actor): Promise<Entry> {
    if (kind.idOf !== null && kind.idOf(data) !== id) throw otherName(kind, id, kind.idOf(data));
    await oneAtATime(transaction);
    const there = await transaction.findOneBy(entryTable, { kind: kind.name, id });
    if (there !== null && isDone(there, data, expected, by)) return there;
    refuseStale(kind, id, there, expected);
    const things = await thingsIn(transaction);
    refuseNewFaults(things, [...without(things, kind, id), { kind: kind.name, id, data }], kind);
    const entry = await this.write(transaction, { kind: kind.name, id, data, removed: false }, there, by);
    const did = there === null || there.removed ? 'added' : 'changed';
    await this.audit.record(transaction, by, did, subjectOf(kind, id, data), { id, version: entry.version });
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
    refuseNewFaults(things, after, kind, lines.length);
    const doubts = newOnes('doubts', things, after).map(inBody(after, kind, lines.length));
    const changes = lines.filter((line) => !isSame(line));
    for (const { id, data } of changes)
      await this.write(
        transaction,
        { kind: kind.name, id, data, removed: false },
        before.get(id) ?? null,
        by,
      );
    const leaving = gone.flatMap((id) => before.get(id) ?? []).filter(({ removed }) => !removed);
    for (const entry of leaving) await this.write(transaction, { ...entry, removed: true }, entry, by);
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
    refuseNewFaults(things, without(things, kind, id), kind);
    await this.write(transaction, { ...there, removed: true }, there, by);
    await this.audit.record(transaction, by, 'removed', subjectOf(kind, id, there.data), { id });
  }

  /** Puts a whole territory, checked before as a scenario, in the place of the one that is there. */
  async replaceAll(transaction: EntityManager, scenario: Scenario, by: Actor): Promise<void> {
    await oneAtATime(transaction);
    const there = await transaction.find(entryTable);
    const before = new Map(there.map((entry) => [`${entry.kind}/${entry.id}`, entry]));
    for (const [position, { kind, id, data }] of thingsOf(scenario).entries()) {
      const old = before.get(`${kind}/${id}`) ?? null;
      before.delete(`${kind}/${id}`);
      if (old !== null && !old.removed && isDeepStrictEqual(old.data, data)) continue;
      await this.write(transaction, { kind, id, data, removed: false, position }, old, by);
    }
    for (const gone of before.values()) {
      if (!gone.removed) await this.write(transaction, { ...gone, removed: true }, gone, by);
    }
  }

  /** Takes everything out; the history stays. */
  async removeAll(transaction: EntityManager, by: Actor): Promise<void> {
    await oneAtATime(transaction);
    for (const entry of await transaction.findBy(entryTable, { removed: false }))
      await this.write(transaction, { ...entry, removed: true }, entry, by);
  }

  private async write(
    transaction: EntityManager,
    entry: Pick<Entry, 'kind' | 'id' | 'data' | 'removed'> & { readonly position?: number },
    before: Entry | null,
    by: Actor,
  ): Promise<Entry> {
    const written: Entry = {
      ...entry,
      version: (before?.version ?? 0) + 1,
      position: entry.position ?? before?.position ?? (await nextPosition(transaction, entry.kind)),
      changedBy: by.id,
      changedAt: new Date(),
    };
    await transaction.upsert(entryTable, { ...written, data: written.data as object }, ['kind', 'id']);
    return written;
  }
}

/** Changes are rare, and each is checked against all the others: they take turns. */
const oneAtATime = (transaction: EntityManager) =>
  transaction.query('select pg_advisory_xact_lock(872364003)');

const nextPosition = async (transaction: EntityManager, kind: string): Promise<number> =>
  ((await transaction.maximum(entryTable, 'position', { kind })) ?? 0) + 1;

const thingsIn = (transaction: EntityManager): Promise<Thing[]> =>
  transaction.find(entryTable, {
    select: { kind: true, id: true, data: true },
    where: { removed: false },
    order: { position: 'ASC', id: 'ASC' },
  });

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

/**
 * Faults that the territory had before are not held against this change. The changed lines are the last of their list:
 * their faults are shown by the path in the body, or in the one of several bodies.
 */
const refuseNewFaults = (
  before: readonly Thing[],
  after: readonly Thing[],
  kind: Kind,
  several: number | null = null,
): void => {
  const added = newOnes('faults', before, after);
  if (added.length === 0) return;
  throw new Problem(
    'faults',
    `The territory would not fit together: see faults.`,
    added.map(inBody(after, kind, several)),
  );
};

type Found = 'faults' | 'doubts';

const newOnes = (of: Found, before: readonly Thing[], after: readonly Thing[]): readonly Fault[] => {
  const found = foundIn(after, of);
  if (found.length === 0) return [];
  const known = new Set(foundIn(before, of).map(wordsOf));
  return found.filter((fault) => !known.has(wordsOf(fault)));
};

const inBody = (after: readonly Thing[], kind: Kind, several: number | null) => {
  const first = countOf(after, kind) - (several ?? 1);
  const own = new RegExp(`^${kind.list ?? kind.name}\\[(\\d+)\\]\\.?`);
  return (fault: Fault): Fault => {
    const place = Number(own.exec(fault.path)?.[1] ?? -1) - first;
    if (place < 0) return fault;
    const path = fault.path.replace(own, several === null ? '' : `[${place}].`).replace(/\.$/, '');
    return { ...fault, path };
  };
};

const foundIn = (things: readonly Thing[], of: Found): readonly Fault[] => {
  const parsed = parseScenario(withEveryDay(assemble(things, new Date())));
  if (of === 'doubts') return parsed.doubts;
  return parsed.ok ? [] : parsed.faults;
};

const countOf = (things: readonly Thing[], kind: Kind) =>
  things.filter((thing) => thing.kind === kind.name).length;

const wordsOf = ({ path, problem }: Fault): string => `${path.replace(/\[\d+\]/g, '[]')} ${problem}`;

const notThere = (kind: Kind, id: string): Problem =>
  new Problem('not-found', `There is no ${kind.singular} ${id}. List them at /api/${kind.name}.`);

const otherName = (kind: Kind, id: string, named: string): Problem =>
  new Problem(
    'faults',
    `This ${kind.singular} is named ${named}, and the address says ${id}: use one name.`,
    [{ path: 'id', problem: `${id} is not ${named}.`, remedy: `Send it to /api/${kind.name}/${named}.` }],
  );
