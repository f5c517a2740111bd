import type { MigrationInterface, QueryRunner } from 'typeorm';

/** Which mark of a flight a rule has set: it goes when the rule is kept again. Marks set before stand until somebody decides. */
export class RuleMarks1700000000027 implements MigrationInterface {
  readonly name = 'RuleMarks1700000000027';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query('alter table flights add column rule_mark text');
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.query('alter table flights drop column rule_mark');
  }
}
