import type { MigrationInterface, QueryRunner } from 'typeorm';

/** What the clock of the territory said at a moment on the wall: by the settings of that moment, however it is set since. */
export class TerritoryTime1700000000025 implements MigrationInterface {
  readonly name = 'TerritoryTime1700000000025';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(`
      create function territory_time(wall timestamptz) returns timestamptz language sql stable as $$
        select wall + coalesce((
          select case when not removed then (data ->> 'clockStartsAt')::timestamptz - changed_at end
          from territory_history
          where kind = 'settings' and id = 'current' and changed_at <= wall
          order by version desc limit 1), interval '0')
      $$`);
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.query('drop function territory_time(timestamptz)');
  }
}
