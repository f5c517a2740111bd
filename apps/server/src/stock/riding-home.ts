/**
 * Joined to `drums`: the flight that a drum brought back is still aboard of. The crew says so where it takes the drum, and
 * the book has it at the end of the flight; it is there once the flight is down.
 */
export const ridingHomeSql = `
  left join lateral (
    select jsonb_build_object('kind', 'aboard', 'flight', flights.id, 'leg', movements.data -> 'leg',
      'from', flights.from_place) as where
    from drum_steps join movements on movements.id = drum_steps.movement join flights on flights.id = movements.flight
    where drum_steps.drum = drums.number and drum_steps.until_at is null and movements.kind = 'brought home'
      and flights.state in ('given', 'loaded', 'away')
  ) riding on true`;
