import { isDeepStrictEqual } from 'node:util';
import type { SurfaceReport } from '@drumline/network';
import { Injectable } from '@nestjs/common';
import { DataSource, type EntityManager, LessThan } from 'typeorm';
import { type Actor, AuditService } from '../audit/audit.service.js';
import { type Page, type PageQuery, pageOf } from '../http/page.js';
import { Problem } from '../http/problem.js';
import { ClockService } from '../territory/clock.service.js';
import { TerritoryService } from '../territory/territory.service.js';
import { type StoredSurfaceReport, surfaceReportTable } from './surface-report.table.js';

@Injectable()
export class SurfaceService {
  private readonly listeners: ((by: Actor) => Promise<unknown>)[] = [];

  constructor(
    private readonly database: DataSource,
    private readonly territory: TerritoryService,
    private readonly clock: ClockService,
    private readonly audit: AuditService,
  ) {}

  /** What is looked at again, by whoever stands above this, as soon as a new report is kept. A listener never throws. */
  onReported(listener: (by: Actor) => Promise<unknown>): void {
    this.listeners.push(listener);
  }

  /** The same id is the same report: sent again it changes nothing. */
  async put(id: string, report: SurfaceReport, by: Actor): Promise<StoredSurfaceReport> {
    await this.refuseUnknownPlace(report.place);
    const receivedAt = await this.clock.now();
    const { stored, isNew } = await this.keep(id, report, { by, receivedAt });
    if (isNew) for (const listener of this.listeners) await listener(by);
    return stored;
  }

  private keep(
    id: string,
    report: SurfaceReport,
    { by, receivedAt }: { readonly by: Actor; readonly receivedAt: Date },
  ): Promise<{ readonly stored: StoredSurfaceReport; readonly isNew: boolean }> {
    return this.database.transaction(async (transaction) => {
      const isNew = await this.insert(transaction, {
        id,
        place: report.place,
        data: report,
        accountId: by.id,
        receivedAt,
      });
      const stored = await transaction.findOneByOrFail(surfaceReportTable, { id });
      if (!isDeepStrictEqual(stored.data, report)) {
        throw new Problem(
          'conflict',
          `Report ${id} is there already and says something else. Give a new report a new id.`,
        );
      }
      if (isNew)
        await this.audit.record(transaction, by, 'reported', `surface ${report.place}`, {
          state: report.state,
        });
      return { stored, isNew };
    });
  }

  /** False: a report with this id was there. Two requests at once: one of them inserts. */
  async insert(transaction: EntityManager, report: StoredSurfaceReport): Promise<boolean> {
    const done = await transaction
      .createQueryBuilder()
      .insert()
      .into(surfaceReportTable)
      .values({ ...report, data: report.data as object })
      .orIgnore()
      .returning('id')
      .execute();
    return (done.raw as readonly unknown[]).length === 1;
  }

  /** The newest first. */
  async list({ limit, after }: PageQuery): Promise<Page<StoredSurfaceReport>> {
    const reports = this.database.getRepository(surfaceReportTable);
    const last = after === undefined ? null : await reports.findOneBy({ id: after });
    const rows = await reports.find({
      where:
        last === null
          ? {}
          : [
              { receivedAt: LessThan(last.receivedAt) },
              { receivedAt: last.receivedAt, id: LessThan(last.id) },
            ],
      order: { receivedAt: 'DESC', id: 'DESC' },
      take: limit + 1,
    });
    return pageOf(rows, limit, ({ id }) => id);
  }

  /** For a scenario. */
  async all(): Promise<readonly SurfaceReport[]> {
    const rows = await this.database
      .getRepository(surfaceReportTable)
      .find({ order: { receivedAt: 'ASC', id: 'ASC' } });
    return rows.map(({ data }) => data);
  }

  private async refuseUnknownPlace(code: string): Promise<void> {
    if (await this.territory.isPlace(code)) return;
    throw new Problem('faults', 'See faults.', [
      { path: 'place', problem: `${code} is not a place of the territory.`, remedy: 'See /api/places.' },
    ]);
  }
}
