import { randomUUID } from 'node:crypto';
import { type Fault, type Missing, missingForPlan, parseScenario } from '@drumline/contract';
import { leftToDo, type Scenario } from '@drumline/planning';
import { Injectable } from '@nestjs/common';
import { DataSource, type EntityManager } from 'typeorm';
import { type Actor, AuditService } from '../audit/audit.service.js';
import { Problem } from '../http/problem.js';
import { type DoneByDrum, DoneService } from '../stock/figures/done.service.js';
import { StockService } from '../stock/stock.service.js';
import { SurfaceService } from '../surface/surface.service.js';
import { ClockService } from '../territory/clock.service.js';
import { type Horizon, TerritoryService } from '../territory/territory.service.js';
import { type WholeTerritory, WholeTerritoryService } from '../territory/whole-territory.service.js';

/** A dry run does everything and then undoes it. */
export interface HowToImport extends Pick<WholeTerritory, 'clock'> {
  readonly dryRun: boolean;
}

export interface Imported {
  readonly dryRun: boolean;
  /** What looks wrong and did not keep the document out. */
  readonly doubts: readonly Fault[];
  readonly places: number;
  readonly drums: number;
}

/** The territory with the stock of now, its programme in full, and what of that has been done. */
export interface Facts {
  readonly scenario: Scenario;
  readonly done: DoneByDrum;
}

/** The scenario document: read from what the features keep, and brought in as the first content of a database. */
@Injectable()
export class ScenariosService {
  constructor(
    private readonly database: DataSource,
    private readonly territory: TerritoryService,
    private readonly wholeTerritory: WholeTerritoryService,
    private readonly surface: SurfaceService,
    private readonly stock: StockService,
    private readonly done: DoneService,
    private readonly clock: ClockService,
    private readonly audit: AuditService,
  ) {}

  /** The territory as it is now: what a plan is made from. */
  async current(horizon: Horizon = {}): Promise<Scenario> {
    const { scenario, done } = await this.facts(horizon);
    return leftToDo(scenario, done);
  }

  async facts(horizon: Horizon = {}): Promise<Facts> {
    const kept = await this.territory.everything(await this.clock.now(), horizon);
    // Before the stock: what comes in between counts twice for once, which is the safer of the two mistakes.
    const done = await this.done.of(kept);
    const stock = await this.stock.picture(kept);
    const surfaceReports = await this.surface.all();
    const parsed = parseScenario({ ...kept, ...stock, surfaceReports }, 'ledger');
    if (parsed.ok) return { scenario: parsed.scenario, done };
    throw new Problem(
      'not-set-up',
      'This is made from the territory, which is not complete. Set-up says what is missing.',
      parsed.faults,
    );
  }

  async missing(): Promise<readonly Missing[]> {
    const kept = await this.territory.asFarAsItGoes(await this.clock.now());
    const isWhole = kept.policy !== undefined && kept.title !== undefined;
    const stock = isWhole ? await this.stock.picture(kept) : {};
    return missingForPlan({ ...kept, ...stock }, 'ledger');
  }

  /** Whole or not at all. */
  async import(document: unknown, { dryRun, clock }: HowToImport, by: Actor): Promise<Imported> {
    const parsed = parseScenario(document);
    if (!parsed.ok)
      throw new Problem('faults', 'The scenario has to be put right: see faults.', parsed.faults);
    const { scenario, doubts } = parsed;
    if (scenario.flights.length > 0) throw flightsAreNotRead;
    if (!(await this.stock.isEmpty())) {
      throw new Problem(
        'conflict',
        'The ledger holds movements already; a scenario opens an empty one. Start with a new database.',
      );
    }
    if (!dryRun)
      await this.database.transaction((transaction) => this.write(transaction, { scenario, clock }, by));
    return { dryRun, doubts, places: scenario.places.length, drums: scenario.drums.length };
  }

  /**
   * Reports and movements of the document are of no account: nobody here wrote them, and to the morning they are no news,
   * whoever brings the document in. That stands in the audit.
   */
  private async write(transaction: EntityManager, whole: WholeTerritory, by: Actor): Promise<void> {
    const { scenario } = whole;
    await this.wholeTerritory.replaceAll(transaction, whole, by);
    for (const report of scenario.surfaceReports) {
      const receivedAt = new Date(report.at);
      await this.surface.insert(transaction, {
        id: randomUUID(),
        place: report.place,
        data: report,
        accountId: null,
        receivedAt,
      });
    }
    await this.stock.open(transaction, scenario);
    await this.audit.record(transaction, by, 'imported', `scenario ${scenario.title}`, {
      places: scenario.places.length,
      drums: scenario.drums.length,
    });
  }
}

const flightsAreNotRead = new Problem('faults', 'See faults.', [
  {
    path: 'flights',
    problem:
      'standing flights are not brought in: each would stand approved with nobody behind it and no drums named.',
    remedy:
      'Leave the list empty. Put them in `handPlan` to compare with; then make a plan here, accept it and approve its flights.',
  },
]);
