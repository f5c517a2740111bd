import type { Movement } from '@drumline/stock';
import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { type Page, pageOf } from '../../http/page.js';
import { Problem } from '../../http/problem.js';
import type { MovementsQuery } from './queries.js';

export interface EnteredMovement {
  /** Its place in the order of arrival. */
  readonly entry: number;
  readonly movement: Movement;
}

/** The ledger to leaf through. */
@Injectable()
export class LedgerPagesService {
  constructor(private readonly database: DataSource) {}

  /** The newest first. */
  async movements({
    limit,
    after,
    place,
    drum,
    flight,
    from,
    until,
  }: MovementsQuery): Promise<Page<EnteredMovement>> {
    const rows: readonly EnteredMovement[] = await this.database.query(
      `select entry::float8 as entry, data as movement from movements
       where ($1::text is null or place = $1) and ($2::text is null or drum = $2 or other_drum = $2)
         and ($3::text is null or flight = $3) and ($4::bigint is null or entry < $4)
         and ($6::timestamptz is null or happened_at >= $6)
         and ($7::timestamptz is null or happened_at < $7)
       order by entry desc limit $5`,
      [place, drum, flight, after, limit + 1, from, until],
    );
    return pageOf(rows, limit, ({ entry }) => String(entry));
  }

  async movement(id: string): Promise<EnteredMovement> {
    const rows: readonly EnteredMovement[] = await this.database.query(
      'select entry::float8 as entry, data as movement from movements where id = $1',
      [id],
    );
    if (rows[0] !== undefined) return rows[0];
    throw new Problem('not-found', `There is no movement ${id}. Look for it in the ledger on Drums.`);
  }
}
