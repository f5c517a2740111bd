import type { MigrationInterface, QueryRunner } from 'typeorm';

/** Where a drum of a flight stands, once somebody has said so; without it the position is found anew. */
export class LoadPositions1700000000014 implements MigrationInterface {
  readonly name = 'LoadPositions1700000000014';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query('alter table flight_loads add column position text');
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.query('alter table flight_loads drop column position');
  }
}
