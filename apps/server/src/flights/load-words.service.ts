import type { CrewSaid } from '@drumline/contract';
import { instantAt, type Minutes } from '@drumline/units';
import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';

interface Row {
  readonly flight: string;
  readonly kind: string;
  readonly at: Date;
  readonly author: string;
  readonly words: string;
}

/** What crews wrote of flights to a place. */
@Injectable()
export class LoadWordsService {
  constructor(private readonly database: DataSource) {}

  /** Notes and reasons of reports of flights with a stop there, the newest first. */
  async ofCrewsAt(places: readonly string[]): Promise<readonly CrewSaid[]> {
    const rows: readonly Row[] = await this.database.query(saidSql, [places]);
    return rows.map(({ flight, kind, at, author, words }) => ({
      flight,
      kind,
      at: instantAt(Math.floor(at.getTime() / 60_000) as Minutes),
      by: author,
      words,
    }));
  }
}

const saidSql = `
  select report.flight_id as flight, report.kind, report.happened_at as at, report.author,
         coalesce(report.data ->> 'reason', report.data ->> 'note') as words
  from flight_reports report join flights on flights.id = report.flight_id
  where coalesce(report.data ->> 'reason', report.data ->> 'note') is not null
    and exists (select from jsonb_array_elements(flights.stops) stop where stop ->> 'place' = any($1))
  order by report.happened_at desc limit 5`;
