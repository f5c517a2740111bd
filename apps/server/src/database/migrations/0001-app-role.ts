import type { MigrationInterface, QueryRunner } from 'typeorm';

/** The role that the program works as, and the trigger function that keeps a table append-only. */
export class AppRole1700000000001 implements MigrationInterface {
  readonly name = 'AppRole1700000000001';

  async up(runner: QueryRunner): Promise<void> {
    // Roles belong to the whole server: another database of it may have made this one already.
    await runner.query(`
      do $$ begin
        create role drumline_app nologin;
      exception
        when duplicate_object or unique_violation then null;
        when insufficient_privilege then
          raise exception 'The role drumline_app is missing and % may not make it. Run as an administrator of the server: create role drumline_app nologin; grant drumline_app to %;', current_user, current_user;
      end $$`);
    await runner.query(`
      do $$ begin
        if not pg_has_role(current_user, 'drumline_app', 'member') then
          execute format('grant drumline_app to %I', current_user);
        end if;
      end $$`);
    await runner.query('grant usage on schema public to drumline_app');
    await runner.query(`
      create function refuse_change() returns trigger language plpgsql as $$
      begin
        raise exception 'Table % is append-only: % is refused. Append a correcting entry.', tg_table_name, tg_op
          using errcode = 'restrict_violation';
      end $$`);
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.query('drop function refuse_change()');
  }
}
