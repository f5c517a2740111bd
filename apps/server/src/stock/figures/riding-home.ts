import { type FlightState, transitions } from '@drumline/planning';
import type { Movement } from '@drumline/stock';
import type { IsoInstant } from '@drumline/units';
import type { EntityManager } from 'typeorm';

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

/** When the flights that brought drums home in these movements were down, as `asLanded` of @drumline/stock asks for it. */
export const downAtOf = async (
  manager: EntityManager,
  movements: readonly Movement[],
): Promise<(flight: string) => IsoInstant | null | undefined> => {
  const home = movements.flatMap((movement) => (movement.kind === 'brought home' ? [movement.flight] : []));
  const rows: readonly Down[] = await manager.query(
    `select id as flight, landed_at as "landedAt", state in (${notDownSql}) as "isUnderWay"
     from flights where id = any($1)`,
    [home],
  );
  const down = new Map(
    rows.map(({ flight, landedAt, isUnderWay }) => [flight, isUnderWay ? null : landedAt?.toISOString()]),
  );
  return (flight) => down.get(flight);
};

interface Down {
  readonly flight: string;
  readonly landedAt: Date | null;
  readonly isUnderWay: boolean;
}

/** Of `drum_steps` and a moment: the drum had been brought home by a flight that was not down yet. */
export const ridingAtSql = (moment: string): string => `
  exists (select from movements join flights on flights.id = movements.flight
    where movements.id = drum_steps.movement and movements.kind = 'brought home'
      and (flights.landed_at > ${moment} or flights.state in (${notDownSql})))`;

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
