import type { MigrationInterface, QueryRunner } from 'typeorm';

/**
 * What a movement is searched by, read out of it by the database itself; and the stock that follows from the
 * movements, which can be thrown away and made again. Why it is kept: docs/decisions/0008-stock-beside-its-ledger.md.
 */
export class Stock1700000000010 implements MigrationInterface {
  readonly name = 'Stock1700000000010';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(`
      alter table movements
        drop column drum, drop column batch, drop column place, drop column flight, drop column corrects,
        add column drum text generated always as (coalesce(data ->> 'drum', data -> 'of' ->> 'drum')) stored,
        add column other_drum text generated always as
          (case data ->> 'kind' when 'joined' then data ->> 'provisional' when 'transferred' then data ->> 'into' end) stored,
        add column batch text generated always as (data ->> 'batch') stored,
        add column held_batch text generated always as (data -> 'of' ->> 'batch') stored,
        add column place text generated always as (coalesce(data ->> 'place', data ->> 'to')) stored,
        add column flight text generated always as (data ->> 'flight') stored,
        add column corrects uuid generated always as ((data ->> 'corrects')::uuid) stored,
        add column recorded_at timestamptz not null default now()`);
    await runner.query('create index movements_drum_index on movements (drum)');
    await runner.query(
      'create index movements_other_drum_index on movements (other_drum) where other_drum is not null',
    );
    await runner.query('create index movements_batch_index on movements (batch) where batch is not null');
    await runner.query(
      'create index movements_held_batch_index on movements (held_batch) where held_batch is not null',
    );
    await runner.query('create index movements_place_index on movements (place, kind, happened_at)');
    await runner.query('create index movements_flight_index on movements (flight) where flight is not null');
    await runner.query(
      'create index movements_corrects_index on movements (corrects) where corrects is not null',
    );
    await runner.query('create index movements_received_index on movements (received_at, entry)');
    for (const table of derivedTables) await runner.query(table);
    await runner.query(`grant select, insert, update, delete on ${derived} to drumline_app`);
    await runner.query(`
      create table case_closings (
        count uuid constraint case_closings_pk primary key constraint case_closings_count_fk references movements (id),
        place text not null,
        data jsonb not null,
        closed_at timestamptz not null default now()
      )`);
    await runner.query(`
      create trigger case_closings_append_only before update or delete or truncate on case_closings
      for each statement execute function refuse_change()`);
    await runner.query('grant select, insert on case_closings to drumline_app');
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.query(`drop table case_closings, ${derived}`);
    await runner.query(
      'alter table movements drop column other_drum, drop column held_batch, drop column recorded_at',
    );
  }
}

const derived = 'drums, drum_steps, batch_states, counts, place_balances, raised';

const derivedTables = [
  `create table drums (
    number text constraint drums_pk primary key,
    place text,
    data jsonb not null
  )`,
  'create index drums_place_index on drums (place)',
  'create index drums_last_figures_index on drums (reverse(number) text_pattern_ops)',
  // From each moment on, up to the next: the place and the litres of a drum at any moment of the past.
  `create table drum_steps (
    drum text not null,
    step integer not null,
    movement uuid not null,
    from_at timestamptz not null,
    until_at timestamptz,
    place text,
    content text not null,
    millilitres bigint not null,
    constraint drum_steps_pk primary key (drum, step)
  )`,
  'create index drum_steps_place_index on drum_steps (place, from_at)',
  `create table batch_states (
    batch text constraint batch_states_pk primary key,
    data jsonb not null,
    version bigint not null default 1
  )`,
  `create table counts (
    id uuid constraint counts_pk primary key,
    place text not null,
    happened_at timestamptz not null,
    written_at timestamptz not null,
    stands boolean not null,
    data jsonb not null
  )`,
  'create index counts_place_index on counts (place, happened_at, written_at, id) where stands',
  `create table place_balances (
    place text constraint place_balances_pk primary key,
    sealed_drums integer not null default 0,
    part_used_drums integer not null default 0,
    empty_drums integer not null default 0,
    book_millilitres bigint not null default 0,
    version bigint not null default 1
  )`,
  `create table raised (
    id text constraint raised_pk primary key,
    kind text not null,
    drum text,
    place text,
    flight text,
    data jsonb not null,
    raised_at timestamptz not null default now()
  )`,
  'create index raised_at_index on raised (raised_at, id)',
];
