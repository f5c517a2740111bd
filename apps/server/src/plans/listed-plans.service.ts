import type { ListedPlan } from '@drumline/contract';
import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { type Page, type PageQuery, pageOf } from '../http/page.js';
import { Problem } from '../http/problem.js';

/** Runs without their scenarios and flights: light enough to be read every second. */
@Injectable()
export class ListedPlansService {
  constructor(private readonly database: DataSource) {}

  /** The latest first. */
  async list({ limit, after }: PageQuery): Promise<Page<ListedPlan>> {
    const rows: readonly ListedPlan[] = await this.database.query(
      `${listedSql}
        where $2::uuid is null or (run.requested_at, run.id) <
          (select requested_at, id from plan_runs where id = $2)
        order by run.requested_at desc, run.id desc limit $1`,
      [limit + 1, after ?? null],
    );
    return pageOf(rows, limit, ({ id }) => id);
  }

  async one(id: string): Promise<ListedPlan> {
    const rows: readonly ListedPlan[] = await this.database.query(`${listedSql} where run.id = $1`, [id]);
    if (rows[0] !== undefined) return rows[0];
    throw new Problem('not-found', `There is no plan ${id}. Look for it among the plans.`);
  }
}

const listedSql = `
  select run.id, run.request, run.state,
         run.requested_by_name as "requestedByName",
         run.scenario->>'asOf' as "asOf",
         extract(epoch from coalesce(run.finished_at, now()) - coalesce(run.started_at, run.finished_at, now()))
           ::float8 as "secondsGone",
         run.cancel_asked_at is not null as "cancelAsked",
         run.progress,
         run.outcome->'plan'->'cost' as cost,
         run.outcome->'plan'->'moneyGap' as "moneyGap",
         acceptance.accepted_by_name as "acceptedByName",
         case when acceptance.plan_id is null then null else
           (select count(*)::int from plan_acceptances earlier where earlier.accepted_at <= acceptance.accepted_at)
         end as number
    from plan_runs run left join plan_acceptances acceptance on acceptance.plan_id = run.id`;
