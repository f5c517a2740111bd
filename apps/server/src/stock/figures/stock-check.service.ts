import { isDeepStrictEqual } from 'node:util';
import { replay } from '@drumline/stock';
import { Injectable } from '@nestjs/common';
import { DataSource, type EntityManager } from 'typeorm';
import { type Actor, AuditService } from '../../audit/audit.service.js';
import { LedgerService } from '../ledger/ledger.service.js';
import { stockRows } from './stock-rows.js';

export interface StockDifference {
  readonly table: string;
  readonly row: string;
  /** As the movements make it; null: there should be no such row. */
  readonly fromMovements: unknown;
  /** As it is kept; null: there is no such row. */
  readonly kept: unknown;
}

/** Compares the stock that is kept with the one that the movements make. */
@Injectable()
export class StockCheckService {
  constructor(
    private readonly database: DataSource,
    private readonly ledger: LedgerService,
    private readonly audit: AuditService,
  ) {}

  differences(): Promise<readonly StockDifference[]> {
    return this.database.transaction('REPEATABLE READ', async (transaction) => {
      const made = await madeOf(this.ledger, transaction);
      const kept = await keptIn(transaction);
      return Object.keys(made).flatMap((table) => compare(table, made[table]!, kept[table]!));
    });
  }

  /** Makes the stock anew, and says what was other than it should have been. */
  async rebuild(by: Actor): Promise<readonly StockDifference[]> {
    const differences = await this.differences();
    await this.database.transaction(async (transaction) => {
      await this.ledger.rebuild(transaction);
      await this.audit.record(transaction, by, 'made anew', 'stock', { differences: differences.length });
    });
    return differences;
  }
}

type Rows = ReadonlyMap<string, unknown>;
type Tables = Readonly<Record<string, Rows>>;

const madeOf = async (ledger: LedgerService, transaction: EntityManager): Promise<Tables> => {
  const rows = stockRows(replay([]), await ledger.readAll(transaction));
  const asJson = JSON.parse(JSON.stringify(rows)) as typeof rows;
  const instants = ({ from_at, until_at }: { from_at: string; until_at: string | null }) => ({
    from_at: iso(from_at),
    until_at: until_at === null ? null : iso(until_at),
  });
  return {
    drums: new Map(asJson.drums.map((row) => [row.number, row])),
    drum_steps: new Map(asJson.steps.map((row) => [`${row.drum} ${row.step}`, { ...row, ...instants(row) }])),
    batch_states: new Map(asJson.batches.map((data) => [data.batch, data])),
    counts: new Map(asJson.counts.map(({ id, place, stands }) => [id, { id, place, stands }])),
    place_balances: new Map(
      asJson.balances
        .filter((balance) => balance.sealedDrums || balance.partUsedDrums || balance.emptyDrums)
        .map((balance) => [balance.place, balance]),
    ),
    raised: new Map(asJson.raised.map(({ id, data }) => [id, data])),
  };
};

const iso = (instant: string): string => new Date(instant).toISOString();

const keptIn = async (transaction: EntityManager): Promise<Tables> => {
  const read = async (sql: string): Promise<Rows> => {
    const rows: readonly { readonly key: string; readonly row: unknown }[] = await transaction.query(sql);
    return new Map(rows.map(({ key, row }) => [key, row]));
  };
  const utc = (column: string) => `to_char(${column} at time zone 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"')`;
  return {
    drums: await read('select number as key, to_jsonb(drums) as row from drums'),
    drum_steps: await read(`select drum || ' ' || step as key,
      to_jsonb(drum_steps) || jsonb_build_object('from_at', ${utc('from_at')}, 'until_at', ${utc('until_at')}) as row
      from drum_steps`),
    batch_states: await read('select batch as key, data as row from batch_states'),
    counts: await read(
      `select id as key, jsonb_build_object('id', id, 'place', place, 'stands', stands) as row from counts`,
    ),
    place_balances:
      await read(`select place as key, jsonb_build_object('place', place, 'sealedDrums', sealed_drums,
      'partUsedDrums', part_used_drums, 'emptyDrums', empty_drums, 'bookMillilitres', book_millilitres) as row
      from place_balances where sealed_drums <> 0 or part_used_drums <> 0 or empty_drums <> 0 or book_millilitres <> 0`),
    raised: await read('select id as key, data as row from raised'),
  };
};

const compare = (table: string, made: Rows, kept: Rows): StockDifference[] =>
  [...new Set([...made.keys(), ...kept.keys()])].flatMap((row) =>
    isDeepStrictEqual(made.get(row), kept.get(row))
      ? []
      : [{ table, row, fromMovements: made.get(row) ?? null, kept: kept.get(row) ?? null }],
  );
