import { isDeepStrictEqual } from 'node:util';
import type { PlanRequest } from '@drumline/contract';
import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { AuditService } from '../audit/audit.service.js';
import { RecheckFlightsService } from '../flights/marks/recheck-flights.service.js';
import { Problem } from '../http/problem.js';
import type { Account } from '../people/account.table.js';
import { LoadScenarioService } from './load-scenario.service.js';
import { PlanQueueService } from './plan-queue.service.js';
import { type PlanAcceptance, type PlanRun, planAcceptanceTable, planRunTable } from './plan-run.table.js';

/** Planning runs: asked for, read, cancelled. The database is the truth, the queue is a bell. */
@Injectable()
export class PlansService {
  constructor(
    private readonly database: DataSource,
    private readonly scenarios: LoadScenarioService,
    private readonly rechecks: RecheckFlightsService,
    private readonly queue: PlanQueueService,
    private readonly audit: AuditService,
  ) {}

  /** The same id and request again is the same run. */
  async request(id: string, request: PlanRequest, by: Account): Promise<PlanRun> {
    const there = await this.repeated(id, request, by);
    if (there !== null) return there;
    await this.rechecks.recheck(by);
    const { scenario, flightRevisions } = await this.scenarios.snapshot(request);
    await this.database.transaction(async (transaction) => {
      const done = await transaction
        .createQueryBuilder()
        .insert()
        .into(planRunTable)
        .values({
          id,
          request: request as object,
          scenario: scenario as object,
          flightRevisions: flightRevisions as object,
          requestedBy: by.id,
          requestedByName: by.fullName,
        })
        .orIgnore()
        .returning('id')
        .execute();
      if ((done.raw as readonly unknown[]).length === 1)
        await this.audit.record(transaction, by, 'asked for', `plan ${id}`, { ...request });
    });
    const run = await this.repeated(id, request, by);
    if (run === null) throw new Error(`plan ${id} was written and is not there`);
    await this.queue.ring(run);
    return run;
  }

  async get(id: string): Promise<PlanRun> {
    const run = await this.database.getRepository(planRunTable).findOneBy({ id });
    if (run !== null) return run;
    throw new Problem('not-found', `There is no plan ${id}. Look for it among the plans.`);
  }

  acceptance(id: string): Promise<PlanAcceptance | null> {
    return this.database.getRepository(planAcceptanceTable).findOneBy({ planId: id });
  }

  /** At once where nobody solves it yet; else the worker hands in the best plan it has. */
  async cancel(id: string, by: Account): Promise<PlanRun> {
    await this.get(id);
    await this.database.transaction(async (transaction) => {
      await transaction.query(
        `update plan_runs set cancel_asked_at = now(),
           state = case state when 'queued' then 'cancelled' else state end,
           finished_at = case state when 'queued' then now() end,
           outcome = case state when 'queued' then '{"status":"cancelled","plan":null,"proof":null}'::jsonb end
         where id = $1 and state in ('queued', 'solving') and cancel_asked_at is null`,
        [id],
      );
      await this.audit.record(transaction, by, 'cancelled', `plan ${id}`);
    });
    return this.get(id);
  }

  /** At once and whole: no plan is kept. Whoever solves it finds that at the next heartbeat, and stops. */
  async discard(id: string, by: Account): Promise<PlanRun> {
    await this.get(id);
    await this.database.transaction(async (transaction) => {
      const [rows]: [unknown[], number] = await transaction.query(
        `update plan_runs set state = 'cancelled', cancel_asked_at = coalesce(cancel_asked_at, now()), finished_at = now(),
           first_plan = null, outcome = '{"status":"cancelled","plan":null,"proof":null}'
         where id = $1 and state in ('queued', 'solving') returning id`,
        [id],
      );
      if (rows.length > 0) await this.audit.record(transaction, by, 'discarded', `plan ${id}`);
    });
    return this.get(id);
  }

  private async repeated(id: string, request: PlanRequest, by: Account): Promise<PlanRun | null> {
    const there = await this.database.getRepository(planRunTable).findOneBy({ id });
    if (there === null) return null;
    if (there.requestedBy === by.id && isDeepStrictEqual(there.request, request)) return there;
    throw new Problem(
      'conflict',
      `Plan ${id} was asked for already, and otherwise. Give a new plan a new id.`,
    );
  }
}
