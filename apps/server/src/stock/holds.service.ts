import type { HoldQuery } from '@drumline/contract';
import {
  type Cache,
  consequenceOfHold,
  type DrumState,
  type HeldPlace,
  type Hold,
  type HoldSubject,
} from '@drumline/stock';
import type { Litres } from '@drumline/units';
import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { Problem } from '../http/problem.js';

import { type NotSeen, SessionsService } from '../people/sessions.service.js';
import { type Level, levelOf } from './place-figures.js';
import { StockFiguresService } from './stock-figures.service.js';
import { stockOf } from './stock-of.js';

export interface HoldEffect {
  readonly drums: number;
  readonly litres: Litres;
  readonly places: readonly PlaceEffect[];
  readonly belowMinimum: readonly string[];
  readonly belowCritical: readonly string[];
  /** Drums of it that are on their way. */
  readonly aboard: readonly { readonly number: string; readonly flight: string }[];
}

interface PlaceEffect extends Omit<HeldPlace, 'drums'> {
  readonly drums: number;
  readonly numbers: readonly string[];
  /** Null: no levels are set for the place. */
  readonly levelAfter: Level | null;
  /** To be read out, with the numbers read back. */
  readonly radioScript: string;
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

  /** What a hold takes out of use, before or after it is set. */
  async effect(query: HoldQuery): Promise<HoldEffect> {
    const { scenario, stock } = await this.figures.current();
    const isNamed = ({ number, batch }: DrumState) =>
      'batch' in query ? batch === query.batch : number === query.drum;
    const places = [...stock.places.values()].filter(({ drums }) => [...drums.values()].some(isNamed));
    const named = stockOf(places, stock.batches, scenario.batches, scenario.timeZone);
    const subject: HoldSubject = 'batch' in query ? query : { drums: [query.drum] };
    const hold: Hold = { reason: 'asked what would follow', by: 'drumline', at: scenario.asOf };
    const found = consequenceOfHold(
      { ...named, asOf: scenario.asOf, countTolerance: scenario.policy.countTolerance },
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
      aboard: await this.aboard(query),
    };
  }

  /** Who has not asked the server for anything since a hold was set, by name. */
  async notHeard(movement: string): Promise<readonly NotSeen[]> {
    const [row] = await this.database.query<readonly { readonly at: Date }[]>(
      `select recorded_at as at from movements where id = $1 and kind = 'held'`,
      [movement],
    );
    if (row === undefined)
      throw new Problem('not-found', `There is no hold ${movement}. See /api/movements.`);
    return this.sessions.notSeenSince(row.at, inTheField);
  }

  private aboard(query: HoldQuery): Promise<HoldEffect['aboard']> {
    return this.database.query(
      `select number, data -> 'where' ->> 'flight' as flight from drums
       where place is null and data -> 'where' ->> 'kind' = 'aboard'
         and ($1::text is null or data ->> 'batch' = $1) and ($2::text is null or number = $2)
       order by number`,
      'batch' in query ? [query.batch, null] : [null, query.drum],
    );
  }
}

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

const radioScript = (
  { place, usableLitresAfter }: Omit<HeldPlace, 'drums'>,
  numbers: readonly string[],
  subject: HoldSubject,
): string => {
  const what = 'batch' in subject ? `Batch ${subject.batch} is held` : 'These are held';
  return `${place}: ${what}. Do not use or load ${numbers.length} drums: ${numbers.join(', ')}. Usable at ${place} is now ${usableLitresAfter} litres. Read back the numbers.`;
};
