import type { MigrationInterface, QueryRunner } from 'typeorm';

export class Proposals1700000000006 implements MigrationInterface {
  readonly name = 'Proposals1700000000006';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(`
      create table proposals (
        id uuid constraint proposals_pk primary key default gen_random_uuid(),
        carried_out_by text not null,
        act text not null,
        subject text not null,
        payload jsonb not null,
        proposed_by uuid not null constraint proposals_account_fk references accounts (id),
        proposed_at timestamptz not null default now(),
        state text not null default 'open' constraint proposals_state_known
          check (state in ('open', 'in force', 'withdrawn')),
        settled_at timestamptz
      )`);
    await runner.query(`create index proposals_open_index on proposals (proposed_at) where state = 'open'`);
    await runner.query(`
      create table agreements (
        proposal_id uuid not null constraint agreements_proposal_fk references proposals (id),
        account_id uuid not null constraint agreements_account_fk references accounts (id),
        at timestamptz not null default now(),
        constraint agreements_pk primary key (proposal_id, account_id)
      )`);
    await runner.query(`
      create trigger agreements_append_only before update or delete or truncate on agreements
      for each statement execute function refuse_change()`);
    await runner.query('grant select, insert, update on proposals to drumline_app');
    await runner.query('grant select, insert on agreements to drumline_app');
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.query('drop table agreements, proposals');
  }
}
