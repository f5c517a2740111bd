import type { MigrationInterface, QueryRunner } from 'typeorm';

export class SurfaceReports1700000000007 implements MigrationInterface {
  readonly name = 'SurfaceReports1700000000007';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(`
      create table surface_reports (
        id uuid constraint surface_reports_pk primary key,
        place text not null,
        data jsonb not null,
        account_id uuid constraint surface_reports_account_fk references accounts (id),
        received_at timestamptz not null
      )`);
    await runner.query('create index surface_reports_received_index on surface_reports (received_at, id)');
    await runner.query(`
      create trigger surface_reports_append_only before update or delete or truncate on surface_reports
      for each statement execute function refuse_change()`);
    await runner.query('grant select, insert on surface_reports to drumline_app');
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.query('drop table surface_reports');
  }
}
