import type { CrewSaid, Loading } from '@drumline/contract';
import { instantAt, type Minutes, type Pounds, pounds } from '@drumline/units';
import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { LocalWordsService } from '../../territory/local-words.service.js';
import { isPastLoading } from '../reports/after-report.js';
import type { Flight } from '../store/flight.table.js';
import { type FlightReport, flightReportTable } from '../store/flight-report.table.js';

interface Row {
  readonly flight: string;
  readonly kind: string;
  readonly at: Date;
  readonly author: string;
  readonly words: string;
}

/** What crews wrote of flights. */
@Injectable()
export class LoadWordsService {
  constructor(
    private readonly database: DataSource,
    private readonly words: LocalWordsService,
  ) {}

  /** Notes and reasons of reports of flights with a stop there, the newest first. */
  async ofCrewsAt(places: readonly string[]): Promise<readonly CrewSaid[]> {
    const rows: readonly Row[] = await this.database.query(saidSql, [places]);
    return rows.map(({ flight, kind, at, author, words }) => ({
      flight,
      kind,
      at: toTheMinute(at),
      by: author,
      words,
    }));
  }

  /** The newest first. What is still to be loaded is typed without sight of anybody's totals. */
  async loadingsOf({ id, state, version }: Flight): Promise<readonly Loading[]> {
    const reports = await this.database.getRepository(flightReportTable).find({
      where: { flightId: id, kind: 'load' },
      order: { happenedAt: 'DESC', id: 'DESC' },
    });
    return (await this.words.ofReports(reports))
      .flatMap(loadingOf)
      .filter((loading) => isPastLoading(state) || loading.version !== version);
  }
}

const loadingOf = ({ data, happenedAt, author, raised }: FlightReport): readonly Loading[] => {
  if (data.kind !== 'load') return [];
  const { version, means, witnesses, signed, checkCode, totals } = data;
  const { load, takeOff } = totals;
  return [
    {
      ...{ version, means, witnesses, raised, at: toTheMinute(happenedAt), by: author },
      load: { ...load, differenceLb: apart(load.bySheetLb, load.byHandLb) },
      takeOff: { ...takeOff, differenceLb: apart(takeOff.bySheetLb, takeOff.byAircraftLb) },
      signed: signed === undefined ? null : { ...signed, second: signed.second ?? null },
      checkCode: checkCode ?? null,
    },
  ];
};

const apart = (one: Pounds, other: Pounds): Pounds => pounds(Math.abs(one - other));

const toTheMinute = (at: Date) => instantAt(Math.floor(at.getTime() / 60_000) as Minutes);

const saidSql = `
  select report.flight_id as flight, report.kind, report.happened_at as at, report.author,
         coalesce(report.data ->> 'reason', report.data ->> 'note') as words
  from flight_reports report join flights on flights.id = report.flight_id
  where coalesce(report.data ->> 'reason', report.data ->> 'note') is not null
    and exists (select from jsonb_array_elements(flights.stops) stop where stop ->> 'place' = any($1))
  order by report.happened_at desc limit 5`;
