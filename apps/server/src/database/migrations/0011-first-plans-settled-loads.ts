import type { MigrationInterface, QueryRunner } from 'typeorm';

/** What a run shows while it is still searching; drums of flights that have left, which the ledger follows from then on. */
export class FirstPlansSettledLoads1700000000011 implements MigrationInterface {
  readonly name = 'FirstPlansSettledLoads1700000000011';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query('alter table plan_runs add column first_plan jsonb');
    await runner.query('alter table flight_loads add column settled boolean not null default false');
    await runner.query('drop index flight_loads_drum_once');
    await runner.query(
      'create unique index flight_loads_drum_once on flight_loads (drum) where drum is not null and not settled',
    );
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.query('drop index flight_loads_drum_once');
    await runner.query(
      'create unique index flight_loads_drum_once on flight_loads (drum) where drum is not null',
    );
    await runner.query('alter table flight_loads drop column settled');
    await runner.query('alter table plan_runs drop column first_plan');
  }
}
