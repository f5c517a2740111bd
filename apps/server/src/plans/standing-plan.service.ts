import type { StandingPlan } from '@drumline/contract';
import type { SurfaceReport } from '@drumline/network';
import type { IsoDate } from '@drumline/units';
import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { type Accepted, isIdea, lastOfferedDay } from './accepted-flights.js';

export { standAsAccepted } from './accepted-flights.js';

/** The plan that was accepted last, with the reports of surfaces that it knew of. */
export interface KnownPlan extends Omit<StandingPlan, 'flights' | 'laterIdeas' | 'isAsAccepted'>, Accepted {
  readonly surfaceReports: readonly SurfaceReport[];
}

/** The plan that was accepted last, its flights without their legs, and without its scenario. */
@Injectable()
export class StandingPlanService {
  constructor(private readonly database: DataSource) {}

  async read(): Promise<KnownPlan | null> {
    const rows: readonly KnownPlan[] = await this.database.query(
      `select run.id,
              (select count(*)::int from plan_acceptances) as number,
              run.scenario->>'asOf' as "asOf",
              run.scenario->'surfaceReports' as "surfaceReports",
              acceptance.accepted_by_name as "acceptedByName",
              run.outcome->'plan'->'cost' as cost,
              run.outcome->'plan'->'moneyGap' as "moneyGap",
              run.outcome->'plan'->>'firstDay' as "firstDay",
              (run.outcome->'plan'->'offeredDays')::int as "offeredDays",
              acceptance.flights as numbers,
              (select coalesce(jsonb_agg(jsonb_build_object(${fields})), '[]')
                 from jsonb_array_elements(run.outcome->'plan'->'flights') flight) as flights
         from plan_acceptances acceptance join plan_runs run on run.id = acceptance.plan_id
        order by acceptance.accepted_at desc limit 1`,
    );
    return rows[0] ?? null;
  }

  /** Ideas of the plan that lie ahead of a day. */
  async laterIdeas(today: IsoDate): Promise<number> {
    const plan = await this.read();
    return plan === null ? 0 : ideasAhead(plan, today);
  }
}

const fields = ['id', 'kind', 'state', 'date', 'aircraft', 'from', 'to', 'stops', 'drums']
  .map((name) => `'${name}', flight->'${name}'`)
  .join(', ');

export const ideasAhead = (plan: Accepted, today: IsoDate): number => {
  const last = lastOfferedDay(plan);
  return plan.flights.filter((flight) => isIdea(flight, last) && flight.date >= today).length;
};
