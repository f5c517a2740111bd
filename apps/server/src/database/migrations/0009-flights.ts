import type { MigrationInterface, QueryRunner } from 'typeorm';

export class Flights1700000000009 implements MigrationInterface {
  readonly name = 'Flights1700000000009';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query('create sequence flight_numbers');
    await runner.query(`
      create table flights (
        id text constraint flights_pk primary key,
        kind text not null constraint flights_kind_known check (kind in ('positioning', 'booked')),
        state text not null constraint flights_state_known check (state in ('idea', 'offered', 'approved', 'given',
          'loaded', 'away', 'home', 'reported', 'closed', 'declined', 'called off', 'turned back', 'ended elsewhere')),
        version integer not null,
        revision integer not null,
        needs_decision text,
        held_in_place boolean not null default false,
        plan_id uuid not null constraint flights_plan_fk references plan_runs (id),
        date date not null,
        departs text not null,
        aircraft text not null,
        pilot text,
        from_place text not null,
        to_place text not null,
        stops jsonb not null,
        planned jsonb not null,
        last_act text not null,
        reason text,
        changed_at timestamptz not null,
        changed_by uuid,
        changed_by_name text not null
      )`);
    await runner.query('create index flights_date_index on flights (date, id)');
    await runner.query(`
      create table flight_legs (
        flight_id text not null constraint flight_legs_flight_fk references flights (id),
        leg integer not null,
        from_place text not null,
        to_place text not null,
        distance_nm double precision not null,
        block_hours double precision not null,
        drums_aboard integer not null,
        drums_possible integer not null,
        constraint flight_legs_pk primary key (flight_id, leg)
      )`);
    await runner.query(`
      create table flight_loads (
        flight_id text not null constraint flight_loads_flight_fk references flights (id),
        load integer not null,
        stop integer not null,
        place text not null,
        drum text,
        constraint flight_loads_pk primary key (flight_id, load)
      )`);
    // The last line of defence: no drum is on two flights, whatever the program does.
    await runner.query(
      'create unique index flight_loads_drum_once on flight_loads (drum) where drum is not null',
    );
    await runner.query(`
      create table flight_history (
        flight_id text not null constraint flight_history_flight_fk references flights (id),
        revision integer not null,
        act text not null,
        state text not null,
        data jsonb not null,
        reason text,
        at timestamptz not null,
        account_id uuid,
        person text not null,
        constraint flight_history_pk primary key (flight_id, revision)
      )`);
    await runner.query(`
      create trigger flight_history_append_only before update or delete or truncate on flight_history
      for each statement execute function refuse_change()`);
    await runner.query(`
      create trigger flights_stay before delete or truncate on flights
      for each statement execute function refuse_change()`);
    await runner.query('grant usage on sequence flight_numbers to drumline_app');
    await runner.query('grant select, insert, update on flights to drumline_app');
    await runner.query('grant select, insert, delete on flight_legs, flight_loads to drumline_app');
    await runner.query('grant select, insert on flight_history to drumline_app');
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.query('drop table flight_history, flight_loads, flight_legs, flights');
    await runner.query('drop sequence flight_numbers');
  }
}
