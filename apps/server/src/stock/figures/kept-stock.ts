import {
  type BatchState,
  type Counted,
  type DifferenceCause,
  type DrumState,
  type PlaceBalance,
  type Where,
  withRiding,
} from '@drumline/stock';
import type { IsoInstant } from '@drumline/units';
import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { ask, prepared } from '../../database/prepared.js';
import { ClockService } from '../../territory/clock.service.js';
import { bare } from './place-figures.js';
import { ridingAtSql, ridingHomeSql } from './riding-home.js';

/** What stands at a place, as the rows beside the ledger say; what still rides home to it does not stand there. */
export interface PlaceStock {
  readonly version: number;
  readonly balance: PlaceBalance;
  readonly drums: ReadonlyMap<string, DrumState>;
  /** The last count that was known when the place was read, and whatever a clock that is ahead has written since. */
  readonly counts: readonly StandingCount[];
}

export interface StandingCount {
  readonly counted: Counted;
  /** The book at the moment of the count, with everything known now. */
  readonly bookMillilitres: PlaceBalance['bookMillilitres'];
  /** As what its difference case was closed; null: it has none, or an open one. */
  readonly closedAs: DifferenceCause | null;
}

/** The stock of every place at one moment. */
export interface StockNow {
  readonly places: ReadonlyMap<string, PlaceStock>;
  readonly placesVersion: number;
  readonly batches: ReadonlyMap<string, BatchState>;
  readonly batchesVersion: number;
  /** Grows with every change of the territory. */
  readonly territoryVersion: number;
}

/**
 * Keeps in memory what was read, place by place, and reads again the places that have changed. Nothing is ever said
 * that was out of date when it was asked for: the versions are read each time.
 */
@Injectable()
export class KeptStock {
  private kept: StockNow = {
    places: new Map(),
    placesVersion: -1,
    batches: new Map(),
    batchesVersion: -1,
    territoryVersion: -1,
  };
  private running: Promise<StockNow> | null = null;
  private next: Promise<StockNow> | null = null;

  constructor(
    private readonly database: DataSource,
    private readonly clock: ClockService,
  ) {}

  /** Several who ask at once are answered by one reading, but never by one that began before they asked. */
  read(): Promise<StockNow> {
    if (this.next !== null) return this.next;
    if (this.running === null) return this.start();
    this.next = this.running.then(
      () => this.start(),
      () => this.start(),
    );
    return this.next;
  }

  async territoryVersion(): Promise<number> {
    const [row] = await ask<{ readonly version: number }>(this.database.manager, territoryVersionSql);
    return row!.version;
  }

  private start(): Promise<StockNow> {
    this.next = null;
    const reading = this.refresh().finally(() => {
      if (this.running === reading) this.running = null;
    });
    this.running = reading;
    return reading;
  }

  private async refresh(): Promise<StockNow> {
    const { manager } = this.database;
    const [versions] = await ask<Versions>(manager, versionsSql);
    if (!isUpToDate(this.kept, versions!)) this.kept = await this.readAgain(versions!);
    return this.kept;
  }

  /** All of it in one statement: the stock of one moment. Where the territory has changed, its clock may have as well. */
  private async readAgain({ territory }: Versions): Promise<StockNow> {
    const isSameTerritory = this.kept.territoryVersion === territory;
    const known = isSameTerritory ? this.kept.places : new Map<string, PlaceStock>();
    const versions = Object.fromEntries([...known].map(([place, { version }]) => [place, version]));
    const now = await this.clock.now();
    const [read] = await ask<Read>(this.database.manager, changedSql, [JSON.stringify(versions), now]);
    return withRead(known, read!);
  }
}

/** Each a sum that grows with every change, as no row ever goes. */
interface Versions {
  readonly territory: number;
  readonly batches: number;
  readonly places: number;
}

const isUpToDate = (kept: StockNow, { territory, batches, places }: Versions): boolean =>
  kept.territoryVersion === territory && kept.batchesVersion === batches && kept.placesVersion === places;

interface Read extends Omit<Versions, 'places'> {
  readonly balances: readonly (PlaceBalance & { readonly version: number })[];
  readonly batchStates: readonly BatchState[];
  /** Of the places whose version is another one than is known. */
  readonly drums: readonly {
    readonly place: string;
    readonly data: DrumState;
    /** Null: it stands there. */
    readonly riding: Where | null;
  }[];
  readonly counts: readonly (StandingCount & { readonly place: string })[];
}

const withRead = (known: StockNow['places'], read: Read): StockNow => {
  const places = read.balances.map(({ version, ...balance }): [string, PlaceStock] => {
    const { place } = balance;
    const was = known.get(place);
    if (was?.version === version) return [place, was];
    const counts = read.counts.filter((count) => count.place === place);
    return [place, { version, ...standingAt(balance, read.drums), counts }];
  });
  return {
    places: new Map(places),
    placesVersion: read.balances.reduce((sum, { version }) => sum + version, 0),
    batches: new Map(read.batchStates.map((state) => [state.batch, state])),
    batchesVersion: read.batches,
    territoryVersion: read.territory,
  };
};

const standingAt = (booked: PlaceBalance, all: Read['drums']): Pick<PlaceStock, 'balance' | 'drums'> => {
  const { place } = booked;
  const own = all.filter((drum) => drum.place === place);
  const riding = own.flatMap(({ data, riding }) => (riding === null ? [] : [[data.number, riding] as const]));
  const { drums, balances } = withRiding(
    { drums: new Map(own.map(({ data }) => [data.number, data])), balances: new Map([[place, booked]]) },
    new Map(riding),
  );
  return {
    balance: balances.get(place) ?? bare(place),
    drums: new Map([...drums].filter(([, { where }]) => where.kind === 'at')),
  };
};

const territorySql = '(select coalesce(sum(version), 0)::float8 from territory_entries)';
const batchesSql = '(select coalesce(sum(version), 0)::float8 from batch_states)';

const territoryVersionSql = prepared(`select ${territorySql} as version`);

const versionsSql = prepared(`
  select ${territorySql} as territory, ${batchesSql} as batches,
    (select coalesce(sum(version), 0)::float8 from place_balances) as places`);

const lastCounts = `
  select place, data as counted, (select data ->> 'cause' from case_closings where count = counts.id) as "closedAs",
    (select coalesce(sum(millilitres), 0)::float8 from drum_steps
     where drum_steps.place = counts.place and from_at <= counts.happened_at
       and (until_at is null or until_at > counts.happened_at)
       and not ${ridingAtSql('counts.happened_at')}) as "bookMillilitres"
  from counts where stands and place = any(array(select place from changed))
    and not exists (select from counts as later where later.stands and later.place = counts.place
      and later.happened_at <= $2
      and (later.happened_at, later.written_at, later.id) > (counts.happened_at, counts.written_at, counts.id))
  order by place, happened_at, written_at, id`;

const changedSql = prepared(`
  with changed as materialized (
    select place from place_balances where version is distinct from ($1::jsonb ->> place)::bigint)
  select ${territorySql} as territory, ${batchesSql} as batches,
    (select coalesce(json_agg(json_build_object('place', place, 'version', version, 'sealedDrums', sealed_drums,
      'partUsedDrums', part_used_drums, 'emptyDrums', empty_drums, 'bookMillilitres', book_millilitres)
      order by place), '[]') from place_balances) as balances,
    (select coalesce(json_agg(data), '[]') from batch_states) as "batchStates",
    (select coalesce(json_agg(json_build_object('place', place, 'data', data, 'riding', riding.where)
       order by number), '[]')
     from drums ${ridingHomeSql} where place = any(array(select place from changed))) as drums,
    (select coalesce(json_agg(count), '[]') from (${lastCounts}) as count) as counts`);

/** The count in force at a moment: the last that had happened by then. */
export const lastCountAt = (place: PlaceStock | undefined, at: IsoInstant): StandingCount | null =>
  place?.counts.findLast(({ counted }) => Date.parse(counted.happenedAt) <= Date.parse(at)) ?? null;
