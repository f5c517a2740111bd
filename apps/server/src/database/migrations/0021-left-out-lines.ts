import type { MigrationInterface, QueryRunner } from 'typeorm';

/** A plan may be accepted without some lines of its list of differences. */
export class LeftOutLines1700000000021 implements MigrationInterface {
  readonly name = 'LeftOutLines1700000000021';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(`alter table plan_acceptances add column left_out jsonb not null default '[]'`);
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.query('alter table plan_acceptances drop column left_out');
  }
}
