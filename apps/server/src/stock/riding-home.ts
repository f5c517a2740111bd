import { type FlightState, transitions } from '@drumline/planning';

/** States in which a flight is not down yet: those from which it can land. */
const notDown: readonly FlightState[] = transitions
  .filter(({ act }) => act === 'land')
  .flatMap(({ from }) => from);

const notDownSql = notDown.map((state) => `'${state}'`).join();

/**
 * Joined to `drums`: the flight that a drum brought back is still aboard of; `ridingHome` of @drumline/stock, read from
 * the tables. Where no flight under way brings anything back, which is asked once, no drum is looked at.
 */
export const ridingHomeSql = `
  left join lateral (
    select jsonb_build_object('kind', 'aboard', 'flight', flights.id, 'leg', movements.data -> 'leg',
      'from', flights.from_place) as where
    from drum_steps join movements on movements.id = drum_steps.movement join flights on flights.id = movements.flight
    where drum_steps.drum = drums.number and drum_steps.until_at is null and movements.kind = 'brought home'
      and flights.state in (${notDownSql})
      and exists (select from flights as under_way join movements as back on back.flight = under_way.id
        where back.kind = 'brought home' and under_way.state in (${notDownSql}))
  ) riding on true`;

/** Flights that were not down at a moment, as known then: `$1`. */
export const notDownAtSql = `
  select flight from (
    select distinct on (flight_id) flight_id as flight, state from flight_history where at <= $1
    order by flight_id, revision desc) as known
  where state in (${notDownSql})`;

/** A flight is down, or it is under way again: the places to which it brings drums are read anew. `$1` is the flight. */
export const changePlacesHomeSql = `
  update place_balances set version = version + 1
  where place = any(array(
    select drum_steps.place from movements join drum_steps on drum_steps.movement = movements.id
    where movements.flight = $1 and movements.kind = 'brought home' and drum_steps.until_at is null))`;

export const isDown = (state: FlightState): boolean => !notDown.includes(state);
