import type { MigrationInterface, QueryRunner } from 'typeorm';

/** The stock ledger. `data` is the movement as libs/stock/ledger reads it; the columns are what is searched by. */
export class Movements1700000000005 implements MigrationInterface {
  readonly name = 'Movements1700000000005';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(`
      create table movements (
        id uuid constraint movements_pk primary key,
        entry bigint generated always as identity constraint movements_entry_unique unique,
        kind text not null,
        drum text,
        batch text,
        place text,
        flight text,
        corrects uuid,
        happened_at timestamptz not null,
        written_at timestamptz not null,
        received_at timestamptz not null default now(),
        means text not null constraint movements_means_known check (means in ('screen', 'phone', 'radio', 'paper')),
        account_id uuid,
        data jsonb not null
      )`);
    await runner.query('create index movements_drum_index on movements (drum, happened_at)');
    await runner.query('create index movements_place_index on movements (place, happened_at)');
    await runner.query('create index movements_flight_index on movements (flight) where flight is not null');
    await runner.query(`
      create trigger movements_append_only before update or delete or truncate on movements
      for each statement execute function refuse_change()`);
    await runner.query('grant select, insert on movements to drumline_app');
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.query('drop table movements');
  }
}
