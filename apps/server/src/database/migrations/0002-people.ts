import type { MigrationInterface, QueryRunner } from 'typeorm';

export class People1700000000002 implements MigrationInterface {
  readonly name = 'People1700000000002';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(`
      create table accounts (
        id uuid constraint accounts_pk primary key,
        name text not null constraint accounts_name_unique unique
          constraint accounts_name_lower_case check (name = lower(name) and name <> ''),
        full_name text not null,
        roles text[] not null constraint accounts_have_a_role check (cardinality(roles) > 0),
        crew text,
        programmes text[] not null default '{}',
        password_hash text not null,
        one_time_password boolean not null,
        disabled boolean not null default false,
        version integer not null default 1,
        created_at timestamptz not null default now()
      )`);
    await runner.query(`
      create table sessions (
        id uuid constraint sessions_pk primary key default gen_random_uuid(),
        token_hash bytea not null constraint sessions_token_unique unique,
        account_id uuid not null constraint sessions_account_fk references accounts (id),
        device text not null,
        created_at timestamptz not null default now(),
        last_seen_at timestamptz not null default now(),
        expires_at timestamptz not null,
        revoked_at timestamptz
      )`);
    await runner.query('create index sessions_account_index on sessions (account_id)');
    await runner.query(`
      create table sign_in_failures (
        id bigint generated always as identity constraint sign_in_failures_pk primary key,
        name text not null,
        address text not null,
        at timestamptz not null default now()
      )`);
    await runner.query('create index sign_in_failures_at_index on sign_in_failures (at)');
    await runner.query('grant select, insert, update on accounts, sessions to drumline_app');
    await runner.query('grant select, insert, delete on sign_in_failures to drumline_app');
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.query('drop table sign_in_failures, sessions, accounts');
  }
}
