import type { MigrationInterface, QueryRunner } from 'typeorm';

/** Who has been told of a hold by radio: a place or the crew of a flight, by whom and when. */
export class HoldCalls1700000000020 implements MigrationInterface {
  readonly name = 'HoldCalls1700000000020';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(`
      create table hold_calls (
        hold_id uuid constraint hold_calls_hold_fk references movements (id),
        called text not null,
        account_id uuid not null constraint hold_calls_account_fk references accounts (id),
        person text not null,
        at timestamptz not null,
        constraint hold_calls_pk primary key (hold_id, called)
      )`);
    await runner.query(`
      create trigger hold_calls_append_only before update or delete or truncate on hold_calls
      for each statement execute function refuse_change()`);
    await runner.query('grant select, insert on hold_calls to drumline_app');
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.query('drop table hold_calls');
  }
}
