import { randomUUID } from 'node:crypto';
import { type Fault, parseScenario } from '@drumline/contract';
import type { Scenario } from '@drumline/planning';
import { type LedgerState, toBatches, toCounts, toDrums } from '@drumline/stock';
import { Injectable } from '@nestjs/common';
import { DataSource, type EntityManager } from 'typeorm';
import { type Actor, AuditService } from '../audit/audit.service.js';
import { Problem } from '../http/problem.js';
import { openingMovements } from '../stock/opening-movements.js';
import { StockService } from '../stock/stock.service.js';
import { SurfaceService } from '../surface/surface.service.js';
import { type Thing, withinHorizon } from '../territory/assemble.js';
import { ClockService } from '../territory/clock.service.js';
import { kinds, type Settings } from '../territory/kinds.js';
import { TerritoryService } from '../territory/territory.service.js';

export interface Imported {
  readonly dryRun: boolean;
  /** What looks wrong and did not keep the document out. */
  readonly doubts: readonly Fault[];
  readonly things: number;
  readonly drums: number;
}

/** The scenario document: read from what the features keep, and brought in as the first content of a database. */
@Injectable()
export class ScenariosService {
  constructor(
    private readonly database: DataSource,
    private readonly territory: TerritoryService,
    private readonly surface: SurfaceService,
    private readonly stock: StockService,
    private readonly clock: ClockService,
    private readonly audit: AuditService,
  ) {}

  /** The territory as it is now: what a plan is made from. */
  async current(): Promise<Scenario> {
    const kept = await this.territory.everything(await this.clock.now());
    const ledger = await this.stock.ledger();
    const surfaceReports = await this.surface.all();
    const parsed = parseScenario({ ...withinHorizon(kept), ...stockOf(ledger, kept), surfaceReports });
    if (parsed.ok) return parsed.scenario;
    throw new Problem('conflict', 'The territory is not complete: see faults.', parsed.faults);
  }

  /** Whole or not at all. A dry run does everything and then undoes it. */
  async import(document: unknown, dryRun: boolean, by: Actor): Promise<Imported> {
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
    const things = thingsOf(scenario);
    if (!dryRun)
      await this.database.transaction((transaction) => this.write(transaction, scenario, things, by));
    return { dryRun, doubts, things: things.length, drums: scenario.drums.length };
  }

  private async write(
    transaction: EntityManager,
    scenario: Scenario,
    things: readonly Thing[],
    by: Actor,
  ): Promise<void> {
    await this.territory.replaceAll(transaction, things, by);
    for (const report of scenario.surfaceReports) {
      const receivedAt = new Date(report.at);
      await this.surface.insert(transaction, {
        id: randomUUID(),
        place: report.place,
        data: report,
        accountId: by.id,
        receivedAt,
      });
    }
    await this.stock.append(transaction, openingMovements(scenario, scenario.asOf), by);
    await this.audit.record(transaction, by, 'imported', `scenario ${scenario.title}`, {
      things: things.length,
      drums: scenario.drums.length,
    });
  }
}

const flightsAreNotRead = new Problem('faults', 'See faults.', [
  {
    path: 'flights',
    problem: 'standing flights cannot be brought in with a territory.',
    remedy: 'Take them out; enter them after the import.',
  },
]);

const stockOf = (ledger: LedgerState, kept: Scenario) => ({
  batches: toBatches(ledger, kept.batches),
  drums: toDrums(ledger, kept.timeZone).filter(
    ({ content }) => content === 'filled sealed' || content === 'part used',
  ),
  counts: toCounts(ledger),
});

const thingsOf = (scenario: Scenario): readonly Thing[] => {
  const { title, note, timeZone, days, offeredDays, currency, noFlyingDays, asOf } = scenario;
  const settings: Settings = {
    title,
    ...(note === undefined ? {} : { note }),
    timeZone,
    clockStartsAt: asOf,
    days,
    offeredDays,
    currency,
    noFlyingDays: [...noFlyingDays],
  };
  // A hold is an event of the ledger, where it can be released.
  const batches = scenario.batches.map(({ held: _, ...batch }) => batch);
  const kept = { ...scenario, batches };
  return [
    { kind: 'settings', id: 'current', data: settings },
    { kind: 'policy', id: 'current', data: scenario.policy },
    ...kinds.flatMap(({ name, list, idOf }) =>
      list === null
        ? []
        : kept[list].map((data) => ({ kind: name, id: idOf === null ? randomUUID() : idOf(data), data })),
    ),
  ];
};
