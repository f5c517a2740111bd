import type { MigrationInterface, QueryRunner } from 'typeorm';

/** A run and its result stay as they were made: the database refuses to change what is finished. */
export class Plans1700000000008 implements MigrationInterface {
  readonly name = 'Plans1700000000008';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(`
      create table plan_runs (
        id uuid constraint plan_runs_pk primary key,
        request jsonb not null,
        scenario jsonb not null,
        flight_revisions jsonb not null,
        state text not null default 'queued' constraint plan_runs_state_known
          check (state in ('queued', 'solving', 'solved', 'infeasible', 'failed', 'cancelled')),
        attempt integer not null default 0,
        requested_by uuid not null constraint plan_runs_account_fk references accounts (id),
        requested_by_name text not null,
        requested_at timestamptz not null default now(),
        started_at timestamptz,
        heartbeat_at timestamptz,
        cancel_asked_at timestamptz,
        finished_at timestamptz,
        progress jsonb,
        outcome jsonb,
        constraint plan_runs_outcome_when_finished
          check ((state in ('queued', 'solving')) = (outcome is null))
      )`);
    await runner.query('create index plan_runs_requested_index on plan_runs (requested_at desc, id)');
    await runner.query(
      `create index plan_runs_open_index on plan_runs (requested_at) where state in ('queued', 'solving')`,
    );
    await runner.query(`
      create function keep_plan_run() returns trigger language plpgsql as $$
      begin
        if old.state not in ('queued', 'solving') then
          raise exception 'Plan % is %: a finished run is never changed.', old.id, old.state
            using errcode = 'restrict_violation';
        end if;
        if new.id <> old.id or new.request <> old.request or new.scenario <> old.scenario
          or new.flight_revisions <> old.flight_revisions or new.requested_by <> old.requested_by then
          raise exception 'Plan %: what it was asked for is never changed.', old.id
            using errcode = 'restrict_violation';
        end if;
        return new;
      end $$`);
    await runner.query(
      'create trigger plan_runs_kept before update on plan_runs for each row execute function keep_plan_run()',
    );
    await runner.query(`
      create trigger plan_runs_stay before delete or truncate on plan_runs
      for each statement execute function refuse_change()`);
    await runner.query(`
      create table plan_acceptances (
        plan_id uuid constraint plan_acceptances_pk primary key
          constraint plan_acceptances_plan_fk references plan_runs (id),
        accepted_by uuid not null constraint plan_acceptances_account_fk references accounts (id),
        accepted_by_name text not null,
        accepted_at timestamptz not null default now(),
        flights jsonb not null,
        called_off jsonb not null,
        changed jsonb not null
      )`);
    await runner.query(`
      create trigger plan_acceptances_append_only before update or delete or truncate on plan_acceptances
      for each statement execute function refuse_change()`);
    await runner.query('grant select, insert, update on plan_runs to drumline_app');
    await runner.query('grant select, insert on plan_acceptances to drumline_app');
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.query('drop table plan_acceptances, plan_runs');
    await runner.query('drop function keep_plan_run()');
  }
}
