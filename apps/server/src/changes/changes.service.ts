import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { ask, prepared } from '../database/prepared.js';

/** What a page watches, each with a word that is another one as soon as anything of the kind is. */
export interface Versions {
  readonly territory: string;
  readonly stock: string;
  readonly flights: string;
  readonly plans: string;
  readonly surfaceReports: string;
  readonly proposals: string;
  readonly handovers: string;
}

@Injectable()
export class ChangesService {
  constructor(private readonly database: DataSource) {}

  /** From the rows themselves, so that whichever process wrote them, nothing is missed. */
  async versions(): Promise<Versions> {
    const [versions] = await ask<Versions>(this.database.manager, versionsSql);
    return versions!;
  }
}

// What is raised by a movement that moves no stock shows here only. A movement written late is among the last ones, as no
// transaction lasts as long as a thousand others.
const lastMovements = `(select concat_ws('-', max(entry), count(*)) from movements
  where entry > (select max(entry) - 1000 from movements))`;

// Numbers drawn by a sequence become visible out of turn: sums and counts do not miss what was committed late.
const versionsSql = prepared(`
  select
    (select coalesce(sum(version), 0)::text from territory_entries) as territory,
    (select concat_ws('.', (select coalesce(sum(version), 0) from place_balances),
      (select coalesce(sum(version), 0) from batch_states), ${lastMovements},
      (select count(*) from case_closings), (select count(*) from raised_acts),
      (select count(*) from hold_calls))) as stock,
    (select concat_ws('.', coalesce(sum(revision), 0), (select count(*) from flight_reports)) from flights) as flights,
    (select concat_ws('.', (select count(*) from plan_acceptances), count(*), count(finished_at), count(cancel_asked_at),
      md5(string_agg(concat(id, state, progress), ',' order by id) filter (where finished_at is null)))
      from plan_runs) as plans,
    (select count(*)::text from surface_reports) as "surfaceReports",
    (select concat_ws('.', count(*), count(settled_at), (select count(*) from agreements)) from proposals) as proposals,
    (select concat_ws('.', count(*), (select count(*) from handover_signatures), (select count(*) from handover_closings))
      from handovers) as handovers`);
