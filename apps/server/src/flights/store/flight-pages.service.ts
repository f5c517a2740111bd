import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { ask, prepared } from '../../database/prepared.js';
import type { Account } from '../../people/account.table.js';
import { FlightsService, seesAll } from '../flights.service.js';
import type { FlightQuery } from './flight-query.js';

const mostKept = 200;

/** Lists of flights as JSON text: what was written out is kept until any flight changes. */
@Injectable()
export class FlightPagesService {
  private kept = { version: -1, pages: new Map<string, string>() };

  constructor(
    private readonly database: DataSource,
    private readonly flights: FlightsService,
  ) {}

  /** The version is read first, at every request: a page may be newer than it is taken for, never older. */
  async list(query: FlightQuery, me: Account): Promise<string> {
    const pages = await this.pagesNow();
    const key = JSON.stringify([seesAll(me) ? null : (me.crew ?? ''), query]);
    const page = pages.get(key) ?? JSON.stringify(await this.flights.list(query, me));
    if (pages.size < mostKept) pages.set(key, page);
    return page;
  }

  private async pagesNow(): Promise<Map<string, string>> {
    const [flights] = await ask<{ readonly version: number }>(this.database.manager, versionSql);
    const { version } = flights!;
    // Answers may come back out of turn; an older version never takes the place of a newer one.
    if (version > this.kept.version) this.kept = { version, pages: new Map() };
    return version === this.kept.version ? this.kept.pages : new Map();
  }
}

/** Grows with every change: a revision only goes up, and no flight is ever removed. */
const versionSql = prepared('select coalesce(sum(revision), 0)::float8 as version from flights');
