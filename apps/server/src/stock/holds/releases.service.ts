import type { HoldQuery } from '@drumline/contract';
import type { Released } from '@drumline/stock';
import type { IsoInstant } from '@drumline/units';
import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { releaseScript } from './hold-words.js';
import { HoldsService } from './holds.service.js';

/** Fuel that was held and may be used again. */
export interface Release {
  readonly at: IsoInstant;
  /** Two people, the first one first. */
  readonly by: readonly string[];
  readonly reason: string;
  /** Whoever was told of the hold by radio has to hear that it is over. */
  readonly callBack: readonly { readonly called: string; readonly radioScript: string }[];
}

/** Releases of holds, and who has to be called back about them. */
@Injectable()
export class ReleasesService {
  constructor(
    private readonly database: DataSource,
    private readonly holds: HoldsService,
  ) {}

  /** Null: it was never released. */
  async latest(of: HoldQuery): Promise<Release | null> {
    const [row]: readonly { readonly data: Released; readonly called: readonly string[] }[] =
      await this.database.query(latestSql, [of]);
    if (row === undefined) return null;
    const { places, flights } = await this.holds.effect(of);
    const numbersOf = (name: string): readonly string[] =>
      places.find(({ place }) => place === name)?.numbers ??
      flights.find(({ flight }) => flight === name)?.numbers ??
      [];
    const { receivedAt, by, second, reason } = row.data;
    return {
      ...{ at: receivedAt, by: [by, second], reason },
      callBack: row.called.map((called) => ({
        called,
        radioScript: releaseScript(called, numbersOf(called), of),
      })),
    };
  }
}

/** Of $1: its last release, and who was called about the holds since the release before. */
const latestSql = `
  with releases as (
    select entry, data from movements where kind = 'released' and data -> 'of' = $1::jsonb order by entry desc limit 2),
  latest as (select * from releases order by entry desc limit 1),
  before as (select coalesce((select entry from releases order by entry desc offset 1), 0) as entry)
  select latest.data, array(
    select called from hold_calls join movements held on held.id = hold_id
    where held.kind = 'held' and held.data -> 'of' = $1::jsonb
      and held.entry > before.entry and held.entry < latest.entry
    group by called order by min(hold_calls.at), called) as called
  from latest, before`;
