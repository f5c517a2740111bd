import type { MigrationInterface, QueryRunner } from 'typeorm';

/** A pilot at an office's browser is not reached in the field: a session is a phone's once the phone page has asked. */
export class FieldPhones1700000000024 implements MigrationInterface {
  readonly name = 'FieldPhones1700000000024';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query('alter table sessions add column on_phone boolean not null default false');
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.query('alter table sessions drop column on_phone');
  }
}
