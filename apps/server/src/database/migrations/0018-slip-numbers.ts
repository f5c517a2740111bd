import type { MigrationInterface, QueryRunner } from 'typeorm';

/** The last number given to a paper slip, so that no two slips ever share one. */
export class SlipNumbers1700000000018 implements MigrationInterface {
  readonly name = 'SlipNumbers1700000000018';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(`
      create table slip_numbers (
        kind text constraint slip_numbers_pk primary key
          constraint slip_numbers_kind check (kind in ('count', 'draw')),
        last integer not null constraint slip_numbers_positive check (last > 0)
      )`);
    await runner.query('grant select, insert, update on slip_numbers to drumline_app');
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.query('drop table slip_numbers');
  }
}
