import type { MigrationInterface, QueryRunner } from 'typeorm';

/** When the clock of the territory was set, and to what: settings that are saved with the same start leave it running. */
export class ClockSettings1700000000026 implements MigrationInterface {
  readonly name = 'ClockSettings1700000000026';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(`
      create view clock_settings as
        select changed_at as set_at, starts_at from (
          select changed_at, starts_at, lag(starts_at) over (order by version) as started_before from (
            select version, changed_at,
              case when not removed then (data ->> 'clockStartsAt')::timestamptz end as starts_at
            from territory_history where kind = 'settings' and id = 'current') as versions) as changes
        where starts_at is distinct from started_before`);
    await runner.query('grant select on clock_settings to drumline_app');
    await runner.query(`
      create or replace function territory_time(wall timestamptz) returns timestamptz language sql stable as $$
        select wall + coalesce(
          (select starts_at - set_at from clock_settings where set_at <= wall order by set_at desc limit 1),
          interval '0')
      $$`);
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.query(`
      create or replace function territory_time(wall timestamptz) returns timestamptz language sql stable as $$
        select wall + coalesce((
          select case when not removed then (data ->> 'clockStartsAt')::timestamptz - changed_at end
          from territory_history
          where kind = 'settings' and id = 'current' and changed_at <= wall
          order by version desc limit 1), interval '0')
      $$`);
    await runner.query('drop view clock_settings');
  }
}
