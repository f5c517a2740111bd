import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { type Actor, AuditService } from '../audit/audit.service.js';
import { rootFolder } from '../config.js';
import { Problem } from '../http/problem.js';
import { type Imported, ScenariosService } from '../scenarios/scenarios.service.js';
import { StockService } from '../stock/stock.service.js';
import { WholeTerritoryService } from '../territory/whole-territory.service.js';

/** What stands in the books since a demo was loaded. All of it goes with the demo. */
export interface Entered {
  readonly movements: number;
  readonly flights: number;
  readonly plans: number;
  /** Of the territory: places, limits, tasks and rules that people have changed since. */
  readonly changes: number;
}

export interface DemoState {
  /** The demo territory can be loaded: the ledger is empty. */
  readonly canLoad: boolean;
  /** Absent: this is no demo. */
  readonly loaded?: { readonly at: Date; readonly entered: Entered };
}

/** The invented territory, to look at the program with: brought in by one act, taken out by one. */
@Injectable()
export class DemoService {
  constructor(
    private readonly database: DataSource,
    private readonly scenarios: ScenariosService,
    private readonly territory: WholeTerritoryService,
    private readonly stock: StockService,
    private readonly audit: AuditService,
  ) {}

  async state(): Promise<DemoState> {
    const [mark] = await this.database.query<readonly { readonly at: Date }[]>(
      'select loaded_at as at from demo_territory',
    );
    if (mark === undefined) return { canLoad: await this.stock.isEmpty() };
    const [entered] = await this.database.query<readonly Entered[]>(enteredSql);
    return { canLoad: false, loaded: { at: mark.at, entered: entered! } };
  }

  /** The document as it is shipped: also what an own territory may be begun from, thing by thing. */
  example(): Promise<string> {
    return readFile(join(rootFolder, 'seeds', 'hollowtarn.json'), 'utf8');
  }

  async load(by: Actor): Promise<Imported> {
    const imported = await this.scenarios.import(
      await this.example(),
      { dryRun: false, clock: 'document' },
      by,
    );
    // After the import: a mark without a demo would let somebody else's ledger be emptied.
    await this.database.query(markSql);
    return imported;
  }

  /** Empties the installation of all but its people and the audit. Only a demo can be removed: the database refuses otherwise. */
  async remove(by: Actor): Promise<void> {
    const { loaded } = await this.state();
    if (loaded === undefined) {
      throw new Problem('conflict', 'This is no demo, and its ledger is kept. Start with a new database.');
    }
    await this.database.transaction(async (transaction) => {
      await this.territory.removeAll(transaction, by);
      await transaction.query('select remove_demo()');
      await this.audit.record(transaction, by, 'removed', 'demo territory', { ...loaded.entered });
    });
  }
}

const enteredSql = `
  select ((select count(*) from movements) - movements)::int as movements,
    (select count(*)::int from flights) as flights,
    (select count(*)::int from plan_runs) as plans,
    ((select coalesce(sum(version), 0) from territory_entries) - territory_version)::int as changes
  from demo_territory`;

const markSql = `
  insert into demo_territory (movements, territory_version)
  select (select count(*) from movements), (select coalesce(sum(version), 0) from territory_entries)
  on conflict do nothing`;
