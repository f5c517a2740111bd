import { latestReports } from '@drumline/network';
import type { Scenario } from '@drumline/planning';
import { inLocalTime } from '@drumline/units';
import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { changedLines } from './changed-lines.js';
import type { ChangedRow } from './changed-words.js';
import type { Changed } from './morning-answer.js';

/** What came in since a moment, whoever wrote it: reports, movements of note, plans, flights, changes of the territory. */
@Injectable()
export class ChangedSinceService {
  constructor(private readonly database: DataSource) {}

  /** The newest first. `known`: every surface report, to say which one a later one outranks. */
  async list(since: Date, known: KnownReports): Promise<readonly Changed[]> {
    const rows: readonly ChangedRow[] = await this.database.query(sql, [since, most]);
    const lines = changedLines(rows, latestReports(known.surfaceReports, known.asOf));
    return lines.map((line) => ({ ...line, what: inLocalTime(line.what, known) }));
  }
}

type KnownReports = Pick<Scenario, 'surfaceReports' | 'asOf' | 'timeZone'>;

/** More than these nobody reads in the morning; the ledger and the audit have them all. */
const most = 60;

// Plans and the audit are kept by the clock on the wall. What the opening of the ledger wrote, of no account, is no news, nor
// what was done before a demo was loaded. Drums of one flight left at one place are one line, each counted once, whoever has
// reported them.
const sql = `
  with news as (
    select 'surface' as kind, received_at as at, null::timestamptz as written_at, person, null as means,
      jsonb_build_object('report', data) as facts
    from surface_reports left join lateral (select full_name as person from accounts where id = account_id) who on true
    where received_at >= $1 and account_id is not null

    union all
    select 'movement', max(received_at), min(written_at), string_agg(distinct data ->> 'by', ' and '),
      case when count(distinct means) = 1 then max(means) end,
      jsonb_build_object('kind', kind, 'place', coalesce(max(place), max(data ->> 'place')), 'flight', max(flight),
        'drums', count(distinct drum), 'first', min(data::text)::jsonb,
        'millilitres', coalesce(sum((data ->> 'millilitres')::bigint), 0))
    from movements
    where received_at >= $1 and account_id is not null
      and kind in ('left at', 'counted', 'drawn', 'held', 'released', 'condemned', 'spilled', 'lost', 'found',
        'corrected', 'slung', 'filled', 'retest passed')
    group by kind, place, flight,
      case when kind <> 'left at' then concat_ws(' ', account_id, means, date_trunc('hour', received_at)) end,
      case when kind in ('left at', 'drawn', 'slung', 'filled') then '' else id::text end

    union all
    select 'flight', at, null, coalesce(full_name, person), null,
      jsonb_build_object('flight', flight_id, 'act', act, 'state', state, 'reason', reason)
    from flight_history left join accounts on accounts.id = account_id
    where at >= $1 and act not in ('offer', 'replan')

    union all
    select 'plan', said, null, accepted_by_name, null, '{}'::jsonb
    from plan_acceptances, territory_time(accepted_at) said where said >= $1

    union all
    select 'territory', said, null, coalesce(full_name, person), null,
      jsonb_build_object('did', did, 'subject', subject, 'changed', detail -> 'changed')
    from audit_entries cross join territory_time(at) said left join accounts on accounts.id = account_id
    where said >= $1 and account_id is not null
      and at >= coalesce((select loaded_at from demo_territory), '-infinity')
      and did in ('added', 'changed', 'removed', 'brought in', 'proposed', 'agreed to')
  )
  select kind, to_char(at at time zone 'UTC', 'YYYY-MM-DD"T"HH24:MI"Z"') as at,
    to_char(written_at at time zone 'UTC', 'YYYY-MM-DD"T"HH24:MI"Z"') as "writtenAt", person, means, facts
  from news order by news.at desc limit $2`;
