import type { HoldQuery } from '@drumline/contract';
import {
  type Cache,
  consequenceOfHold,
  type DrumState,
  type HeldPlace,
  type Hold,
  type HoldSubject,
  withoutHold,
} from '@drumline/stock';
import type { Litres } from '@drumline/units';
import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { Problem } from '../../http/problem.js';
import { type NotSeen, SessionsService } from '../../people/sessions.service.js';
import { type Level, levelOf } from '../figures/place-figures.js';
import { ridingHomeSql } from '../figures/riding-home.js';
import { StockFiguresService } from '../figures/stock-figures.service.js';
import { stockOf } from '../figures/stock-of.js';
import { flightScript, message, radioScript } from './hold-words.js';

export interface HoldEffect {
  readonly drums: number;
  readonly litres: Litres;
  readonly places: readonly PlaceEffect[];
  readonly belowMinimum: readonly string[];
  readonly belowCritical: readonly string[];
  /** Flights that have drums of it aboard, or set aside. */
  readonly flights: readonly FlightEffect[];
  /** For a text message to everybody. */
  readonly message: string;
  /** Everybody in the field with a device, who therefore has to hear of it. */
  readonly toHear: readonly NotSeen[];
}

interface FlightEffect {
  readonly flight: string;
  /** Null: the ledger has heard of a flight that no plan has. */
  readonly state: string | null;
  readonly isAboard: boolean;
  readonly numbers: readonly string[];
  readonly radioScript: string;
}

interface PlaceEffect extends Omit<HeldPlace, 'drums'> {
  readonly drums: number;
  readonly numbers: readonly string[];
  /** Null: no levels are set for the place. */
  readonly levelAfter: Level | null;
  /** To be read out, with the numbers read back. */
  readonly radioScript: string;
}

export interface NotHeard {
  readonly items: readonly NotSeen[];
  /** Of the field, with a device that is signed in; 0: the radio only. */
  readonly peopleWithDevice: number;
}

/** Roles that carry a phone. */
export const inTheField = ['pilot', 'helicopter crew', 'storekeeper'] as const;

@Injectable()
export class HoldsService {
  constructor(
    private readonly database: DataSource,
    private readonly figures: StockFiguresService,
    private readonly sessions: SessionsService,
  ) {}

  /** What a hold would take out of use; with `standing`, what that hold has taken out since it was set. */
  async effect(query: HoldQuery, standing?: Hold): Promise<HoldEffect> {
    const { scenario, stock } = await this.figures.current();
    const isNamed = ({ number, batch }: DrumState) =>
      'batch' in query ? batch === query.batch : number === query.drum;
    const places = [...stock.places.values()].filter(({ drums }) => [...drums.values()].some(isNamed));
    const named = stockOf(places, stock.batches, scenario.batches, scenario.timeZone);
    const subject: HoldSubject = 'batch' in query ? query : { drums: [query.drum] };
    const hold = standing ?? { reason: 'asked what would follow', by: 'drumline', at: scenario.asOf };
    const picture = { ...named, asOf: scenario.asOf, countTolerance: scenario.policy.countTolerance };
    const found = consequenceOfHold(
      withoutHold(picture, hold),
      scenario.caches,
      subject,
      hold,
      scenario.firstDay,
    );
    const cacheOf = new Map(scenario.caches.map((cache) => [cache.place, cache]));
    return {
      drums: found.drums,
      litres: found.litres,
      places: found.places.map((held) => placeEffect(held, cacheOf.get(held.place), subject)),
      belowMinimum: found.belowMinimum,
      belowCritical: found.belowCritical,
      flights: await this.flights(query, subject),
      message: message(
        subject,
        found.places.map(({ place, drums }) => ({ place, drums: drums.length })),
        found.litres,
      ),
      toHear: await this.sessions.notSeenSince(new Date(), inTheField),
    };
  }

  /** Who has not asked the server for anything since a hold was set, by name; of how many who have a device. */
  async notHeard(movement: string): Promise<NotHeard> {
    const [row] = await this.database.query<readonly { readonly at: Date }[]>(
      `select recorded_at as at from movements where id = $1 and kind = 'held'`,
      [movement],
    );
    if (row === undefined)
      throw new Problem('not-found', `There is no hold ${movement}. See /api/movements.`);
    const items = await this.sessions.notSeenSince(row.at, inTheField);
    return { items, peopleWithDevice: await this.sessions.peopleWithDevice(inTheField) };
  }

  /** Aboard by the ledger, or set aside for a flight that has not left. */
  private async flights(query: HoldQuery, subject: HoldSubject): Promise<HoldEffect['flights']> {
    const rows: readonly Omit<FlightEffect, 'radioScript'>[] = await this.database.query(
      flightsSql,
      'batch' in query ? [query.batch, null] : [null, query.drum],
    );
    return rows.map((row) => ({ ...row, radioScript: flightScript(row.flight, row.numbers, subject) }));
  }
}

const flightsSql = `
  with named as (
    select number, coalesce(riding.where, data -> 'where') as where from drums ${ridingHomeSql}
    where ($1::text is null or data ->> 'batch' = $1) and ($2::text is null or number = $2)),
  concerned as (
    select "where" ->> 'flight' as flight, number, true as aboard from named where "where" ->> 'kind' = 'aboard'
    union
    select flight_id, drum, false from flight_loads join named on number = drum
    where not settled and "where" ->> 'kind' <> 'aboard')
  select flight, (select state from flights where id = flight) as state, bool_or(aboard) as "isAboard",
    array_agg(number order by number) as numbers
  from concerned group by flight order by flight`;

const placeEffect = (
  { drums, ...held }: HeldPlace,
  cache: Cache | undefined,
  subject: HoldSubject,
): PlaceEffect => {
  const numbers = drums.map(({ number }) => number).sort();
  const levelAfter = cache
    ? levelOf(held.usableLitresAfter, cache.minimumLitres, cache.criticalLitres)
    : null;
  return {
    ...held,
    drums: drums.length,
    numbers,
    levelAfter,
    radioScript: radioScript(held, numbers, subject),
  };
};
