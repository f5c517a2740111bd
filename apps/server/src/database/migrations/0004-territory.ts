import type { MigrationInterface, QueryRunner } from 'typeorm';

/** Why documents and not a table for each kind: docs/decisions/0009-the-territory-as-versioned-documents.md. */
export class Territory1700000000004 implements MigrationInterface {
  readonly name = 'Territory1700000000004';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(`
      create table territory_entries (
        kind text not null,
        id text not null,
        version integer not null,
        data jsonb not null,
        position integer not null default 0,
        removed boolean not null default false,
        changed_by uuid,
        changed_at timestamptz not null default now(),
        constraint territory_entries_pk primary key (kind, id)
      )`);
    await runner.query(`
      create table territory_history (
        kind text not null,
        id text not null,
        version integer not null,
        data jsonb not null,
        position integer not null,
        removed boolean not null,
        changed_by uuid,
        changed_at timestamptz not null,
        constraint territory_history_pk primary key (kind, id, version)
      )`);
    await runner.query(`
      create function keep_territory_history() returns trigger language plpgsql as $$
      begin
        insert into territory_history (kind, id, version, data, position, removed, changed_by, changed_at)
        values (new.kind, new.id, new.version, new.data, new.position, new.removed, new.changed_by, new.changed_at);
        return null;
      end $$`);
    await runner.query(`
      create trigger territory_entries_history after insert or update on territory_entries
      for each row execute function keep_territory_history()`);
    await runner.query(`
      create trigger territory_entries_stay before delete or truncate on territory_entries
      for each statement execute function refuse_change()`);
    await runner.query(`
      create trigger territory_history_append_only before update or delete or truncate on territory_history
      for each statement execute function refuse_change()`);
    await runner.query('grant select, insert, update on territory_entries to drumline_app');
    await runner.query('grant select, insert on territory_history to drumline_app');
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.query('drop table territory_history, territory_entries');
    await runner.query('drop function keep_territory_history()');
  }
}
