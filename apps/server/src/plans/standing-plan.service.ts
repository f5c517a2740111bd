import type { StandingPlan } from '@drumline/contract';
import type { SurfaceReport } from '@drumline/network';
import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';

/** With the reports of surfaces that it knew of. */
interface Known extends StandingPlan {
  readonly surfaceReports: readonly SurfaceReport[];
}

/** The plan that was accepted last, without its flights and its scenario. */
@Injectable()
export class StandingPlanService {
  constructor(private readonly database: DataSource) {}

  async read(): Promise<Known | null> {
    const rows: readonly Known[] = await this.database.query(
      `select run.id,
              (select count(*)::int from plan_acceptances) as number,
              run.scenario->>'asOf' as "asOf",
              run.scenario->'surfaceReports' as "surfaceReports",
              acceptance.accepted_by_name as "acceptedByName",
              run.outcome->'plan'->'cost' as cost,
              run.outcome->'plan'->'moneyGap' as "moneyGap"
         from plan_acceptances acceptance join plan_runs run on run.id = acceptance.plan_id
        order by acceptance.accepted_at desc limit 1`,
    );
    return rows[0] ?? null;
  }
}
