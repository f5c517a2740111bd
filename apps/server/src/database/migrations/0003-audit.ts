import type { MigrationInterface, QueryRunner } from 'typeorm';

export class Audit1700000000003 implements MigrationInterface {
  readonly name = 'Audit1700000000003';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(`
      create table audit_entries (
        id bigint generated always as identity constraint audit_entries_pk primary key,
        at timestamptz not null default now(),
        account_id uuid,
        person text not null,
        did text not null,
        subject text not null,
        request_id text,
        detail jsonb not null default '{}'
      )`);
    await runner.query(`
      create trigger audit_entries_append_only before update or delete or truncate on audit_entries
      for each statement execute function refuse_change()`);
    await runner.query('grant select, insert on audit_entries to drumline_app');
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.query('drop table audit_entries');
  }
}
