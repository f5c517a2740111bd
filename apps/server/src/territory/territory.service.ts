import type { Scenario } from '@drumline/planning';
import { Injectable } from '@nestjs/common';
import { DataSource, MoreThan } from 'typeorm';
import { type Page, type PageQuery, pageOf } from '../http/page.js';
import { Problem } from '../http/problem.js';
import { assemble, withinHorizon } from './assemble.js';
import { type AskedChange, changedScenario } from './changed-scenario.js';
import { type Entry, entryTable } from './entry.table.js';
import { notThere, thingsIn } from './kept-entries.js';
import type { Kind } from './kinds.js';

export type Horizon = Partial<Pick<Scenario, 'days' | 'offeredDays'>>;

/** What a scenario cannot be without, as people call it. */
const needed = { settings: 'its title, days and time zone', policy: 'its fuel, crew and drum rules' };

/** What people keep of the territory, to read: places, limits, aircraft, crews, caches, programme, rules. */
@Injectable()
export class TerritoryService {
  constructor(private readonly database: DataSource) {}

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

  /** A scenario of this territory as it would be after one change; nothing is changed. */
  async changed(scenario: Scenario, change: AskedChange): Promise<Scenario> {
    return changedScenario(scenario, change, await this.all(change.kind));
  }

  /** Its time zone; UTC until somebody has set it. */
  async timeZone(): Promise<string> {
    const [settings] = await this.all('settings');
    return (settings?.data as { readonly timeZone: string } | undefined)?.timeZone ?? 'UTC';
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
    const missing = Object.entries(needed).flatMap(([name, words]) =>
      things.some(({ kind }) => kind === name) ? [] : [words],
    );
    if (missing.length === 0) return withinHorizon({ ...assemble(things, now), ...horizon });
    throw new Problem(
      'not-set-up',
      `This is made from the territory, and ${missing.join(' and ')} are not filled in yet. Set-up says step by step what a first plan needs.`,
    );
  }

  /** The same where settings or policy are not there yet: then it is no whole scenario, and parseScenario says so. */
  async asFarAsItGoes(now: Date): Promise<Scenario> {
    const kept = assemble(await thingsIn(this.database.manager), now);
    return kept.days === undefined ? kept : withinHorizon(kept);
  }
}
