import type { MigrationInterface, QueryRunner } from 'typeorm';

/** Fills are held against the density of their batch: found without reading the whole ledger. */
export class FilledDrums1700000000023 implements MigrationInterface {
  readonly name = 'FilledDrums1700000000023';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(`create index movements_filled_index on movements (entry) where kind = 'filled'`);
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.query('drop index movements_filled_index');
  }
}
