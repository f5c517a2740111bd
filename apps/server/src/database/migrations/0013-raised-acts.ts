import type { MigrationInterface, QueryRunner } from 'typeorm';

/** What people did about raised things. `what`: how the thing read then; if it reads otherwise later, it is open again. */
export class RaisedActs1700000000013 implements MigrationInterface {
  readonly name = 'RaisedActs1700000000013';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(`
      create table raised_acts (
        id uuid constraint raised_acts_pk primary key,
        entry bigint generated always as identity constraint raised_acts_entry_unique unique,
        raised text not null,
        act text not null constraint raised_acts_act_known check (act in ('seen', 'open again')),
        what text not null,
        words text not null,
        account_id uuid,
        person text not null,
        at timestamptz not null
      )`);
    await runner.query('create index raised_acts_raised_index on raised_acts (raised, entry)');
    await runner.query(`
      create trigger raised_acts_append_only before update or delete or truncate on raised_acts
      for each statement execute function refuse_change()`);
    await runner.query('grant select, insert on raised_acts to drumline_app');
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.query('drop table raised_acts');
  }
}
