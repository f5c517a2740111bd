import type { MigrationInterface, QueryRunner } from 'typeorm';

/** Lists that one shift hands to the next, the signatures for their items, and that they were taken over. */
export class Handovers1700000000015 implements MigrationInterface {
  readonly name = 'Handovers1700000000015';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(`
      create table handovers (
        id uuid constraint handovers_pk primary key,
        items jsonb not null,
        account_id uuid not null constraint handovers_account_fk references accounts (id),
        person text not null,
        at timestamptz not null
      )`);
    await runner.query('create index handovers_at_index on handovers (at, id)');
    await runner.query(`
      create table handover_signatures (
        handover_id uuid constraint handover_signatures_handover_fk references handovers (id),
        item integer not null,
        note text,
        account_id uuid not null constraint handover_signatures_account_fk references accounts (id),
        person text not null,
        at timestamptz not null,
        constraint handover_signatures_pk primary key (handover_id, item)
      )`);
    await runner.query(`
      create table handover_closings (
        handover_id uuid constraint handover_closings_pk primary key
          constraint handover_closings_handover_fk references handovers (id),
        account_id uuid not null constraint handover_closings_account_fk references accounts (id),
        person text not null,
        at timestamptz not null
      )`);
    for (const table of ['handovers', 'handover_signatures', 'handover_closings']) {
      await runner.query(`
        create trigger ${table}_append_only before update or delete or truncate on ${table}
        for each statement execute function refuse_change()`);
      await runner.query(`grant select, insert on ${table} to drumline_app`);
    }
  }

  async down(runner: QueryRunner): Promise<void> {
    for (const table of ['handover_closings', 'handover_signatures', 'handovers'])
      await runner.query(`drop table ${table}`);
  }
}
