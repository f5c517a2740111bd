import type { MigrationInterface, QueryRunner } from 'typeorm';

/** What the crew says a drum weighs that is aboard and in no book. */
export class ToldWeights1700000000022 implements MigrationInterface {
  readonly name = 'ToldWeights1700000000022';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query('alter table flight_loads add column told_kg double precision');
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.query('alter table flight_loads drop column told_kg');
  }
}
