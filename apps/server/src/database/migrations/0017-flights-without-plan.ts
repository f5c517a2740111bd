import type { MigrationInterface, QueryRunner } from 'typeorm';

/** A booked flight to which a person adds drums comes out of no plan. */
export class FlightsWithoutPlan1700000000017 implements MigrationInterface {
  readonly name = 'FlightsWithoutPlan1700000000017';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query('alter table flights alter column plan_id drop not null');
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.query('alter table flights alter column plan_id set not null');
  }
}
