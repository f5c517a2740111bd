import type { MigrationInterface, QueryRunner } from 'typeorm';

/** What crews report of flights, under ids of their own; times of a flight, its closing, and marks that holds set. */
export class FlightReports1700000000012 implements MigrationInterface {
  readonly name = 'FlightReports1700000000012';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(`
      create table flight_reports (
        id uuid constraint flight_reports_pk primary key,
        entry bigint generated always as identity constraint flight_reports_entry_unique unique,
        flight_id text not null constraint flight_reports_flight_fk references flights (id),
        kind text not null,
        happened_at timestamptz not null,
        received_at timestamptz not null,
        data jsonb not null,
        author text not null,
        sent_by text not null,
        account_id uuid,
        raised jsonb not null
      )`);
    await runner.query('create index flight_reports_flight_index on flight_reports (flight_id, happened_at)');
    await runner.query(`
      create trigger flight_reports_append_only before update or delete or truncate on flight_reports
      for each statement execute function refuse_change()`);
    await runner.query('grant select, insert on flight_reports to drumline_app');
    await runner.query('alter table flights add column off_at timestamptz');
    await runner.query('alter table flights add column landed_at timestamptz');
    await runner.query('alter table flights add column closing jsonb');
    await runner.query('alter table flights add column hold_mark jsonb');
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.query('drop table flight_reports');
    for (const column of ['off_at', 'landed_at', 'closing', 'hold_mark'])
      await runner.query(`alter table flights drop column ${column}`);
  }
}
