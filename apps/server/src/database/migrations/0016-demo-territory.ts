import type { MigrationInterface, QueryRunner } from 'typeorm';

/**
 * The mark that an installation began with the demo territory, and the one way in which a ledger is ever emptied: only where
 * the mark is, and it goes with it. People and the audit stay; the territory itself is taken out by the program, so that its
 * history stays too. Every other table is emptied, those of later migrations included.
 */
export class DemoTerritory1700000000016 implements MigrationInterface {
  readonly name = 'DemoTerritory1700000000016';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(`
      create table demo_territory (
        is_there boolean constraint demo_territory_pk primary key default true
          constraint demo_territory_once check (is_there),
        loaded_at timestamptz not null default now(),
        movements bigint not null,
        territory_version bigint not null
      )`);
    await runner.query('grant select, insert on demo_territory to drumline_app');
    await runner.query(`
      create function remove_demo() returns void language plpgsql security definer set search_path = public as $$
      declare
        emptied text[];
        each text;
      begin
        if not exists (select from demo_territory) then
          raise exception 'This is no demo: its ledger is not emptied.' using errcode = 'restrict_violation';
        end if;
        select array_agg(format('%I', relname) order by relname) into emptied from pg_class
        where relnamespace = 'public'::regnamespace and relkind = 'r' and relname not in
          ('migrations', 'accounts', 'sessions', 'audit_entries', 'territory_entries', 'territory_history');
        foreach each in array emptied loop
          execute format('alter table %s disable trigger user', each);
        end loop;
        execute 'truncate ' || array_to_string(emptied, ', ');
        foreach each in array emptied loop
          execute format('alter table %s enable trigger user', each);
        end loop;
      end $$`);
    await runner.query('revoke all on function remove_demo() from public');
    await runner.query('grant execute on function remove_demo() to drumline_app');
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.query('drop function remove_demo()');
    await runner.query('drop table demo_territory');
  }
}
