import type { MigrationInterface, QueryRunner } from 'typeorm';

/**
 * What finds reports with names that nobody has set up, or figures that no drum can have, without reading the whole
 * ledger. Which of them are strange, libs/stock says: a weight is only told apart here from the plain ones.
 */
export class StrangeReports1700000000019 implements MigrationInterface {
  readonly name = 'StrangeReports1700000000019';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(`
      alter table movements
        add column aircraft text generated always as
          (case data ->> 'kind' when 'drawn' then data ->> 'into' when 'slung' then data ->> 'helicopter' end) stored,
        add column programme text generated always as (data ->> 'programme') stored,
        add column most_millilitres bigint generated always as (
          case when data ->> 'kind' <> 'counted' then greatest((data ->> 'millilitres')::bigint,
            (data ->> 'foundMillilitres')::bigint, (data ->> 'leftMillilitres')::bigint) end) stored,
        add column is_odd_weight boolean generated always as (coalesce(
          (data ->> 'grossKg')::numeric = 0 or (data ->> 'tareKg')::numeric = 0
          or ((data ->> 'grossKg')::numeric - (data ->> 'tareKg')::numeric) * 1000
            not between 0.775 * (data ->> 'millilitres')::numeric and 0.84 * (data ->> 'millilitres')::numeric,
          false)) stored`);
    await runner.query(
      'create index movements_aircraft_index on movements (aircraft) where aircraft is not null',
    );
    await runner.query(
      'create index movements_programme_index on movements (programme) where programme is not null',
    );
    await runner.query(
      'create index movements_most_index on movements (most_millilitres) where most_millilitres is not null',
    );
    await runner.query('create index movements_odd_weight_index on movements (entry) where is_odd_weight');
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.query(`
      alter table movements drop column aircraft, drop column programme, drop column most_millilitres,
        drop column is_odd_weight`);
  }
}
