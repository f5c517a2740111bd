import type { DrumOfFlight } from '@drumline/planning';
import { type LedgerState, type Movement, replay } from '@drumline/stock';
import { Injectable } from '@nestjs/common';
import type { EntityManager } from 'typeorm';

type OnFlight = Extract<Movement, { readonly kind: 'loaded' | 'left at' | 'brought home' }>;

/** What the ledger says of the drums of flights. */
@Injectable()
export class FlightDrumsService {
  /**
   * By flight, in the order of numbers: every drum that a standing movement of it names, with where it came off. `loads`: the numbers of the
   * flight's own list, by which a drum that has several is called.
   */
  async moved(
    transaction: EntityManager,
    flights: readonly string[],
    loads: ReadonlySet<string>,
  ): Promise<ReadonlyMap<string, readonly DrumOfFlight[]>> {
    const ledger = replay(await movementsOf(transaction, flights));
    const aboard = await aboardOf(transaction, flights);
    return new Map(flights.map((flight) => [flight, ofFlight(ledger, flight, aboard, loads).sort(byNumber)]));
  }
}

const ofFlight = (
  { drums }: LedgerState,
  flight: string,
  aboard: ReadonlyMap<string, string>,
  loads: ReadonlySet<string>,
): DrumOfFlight[] =>
  [...drums.values()].flatMap(({ number, alsoKnownAs, history }) => {
    const own = history
      .filter(({ reversedBy, sameAs }) => reversedBy.length === 0 && sameAs === null)
      .map(({ movement }) => movement)
      .filter(isOnFlight)
      .filter((movement) => movement.flight === flight);
    if (own.length === 0) return [];
    const names = [number, ...alsoKnownAs];
    const off = own.findLast(({ kind }) => kind !== 'loaded');
    return [
      {
        drum: names.find((name) => loads.has(name)) ?? number,
        off: off === undefined ? null : { kind: off.kind as 'left at' | 'brought home', place: off.place },
        aboard: aboard.get(number) === flight,
      },
    ];
  });

const byNumber = (one: DrumOfFlight, other: DrumOfFlight): number => (one.drum < other.drum ? -1 : 1);

const isOnFlight = (movement: Movement): movement is OnFlight =>
  movement.kind === 'loaded' || movement.kind === 'left at' || movement.kind === 'brought home';

const aboardOf = async (
  transaction: EntityManager,
  flights: readonly string[],
): Promise<ReadonlyMap<string, string>> => {
  const rows: readonly { readonly number: string; readonly flight: string }[] = await transaction.query(
    `select number, data -> 'where' ->> 'flight' as flight from drums
     where place is null and data -> 'where' ->> 'kind' = 'aboard' and data -> 'where' ->> 'flight' = any($1)`,
    [flights],
  );
  return new Map(rows.map(({ number, flight }) => [number, flight]));
};

/** With the joins of their drums and whatever corrects any of these: enough to read the flights, not the drums. */
const movementsOf = async (
  transaction: EntityManager,
  flights: readonly string[],
): Promise<readonly Movement[]> => {
  const rows: readonly { readonly data: Movement }[] = await transaction.query(movementsSql, [flights]);
  return rows.map(({ data }) => data);
};

const movementsSql = `
  with recursive own as (select id, drum, data from movements where flight = any($1)),
  joins as (
    select id, data from movements where kind = 'joined'
      and (drum in (select drum from own) or other_drum in (select drum from own))),
  found as (
    select id, data from own union select id, data from joins
    union select movements.id, movements.data from movements join found on movements.corrects = found.id)
  select data from found`;
