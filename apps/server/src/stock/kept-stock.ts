import type { BatchState, Counted, DrumState, PlaceBalance } from '@drumline/stock';
import type { IsoInstant } from '@drumline/units';
import { Injectable } from '@nestjs/common';
import { DataSource, type EntityManager } from 'typeorm';
import { ClockService } from '../territory/clock.service.js';

/** What stands at a place, as the rows beside the ledger say. */
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
  /** Its difference case was closed: the book stands. */
  readonly isClosed: boolean;
}

/** The stock of every place at one moment. */
export interface StockNow {
  readonly places: ReadonlyMap<string, PlaceStock>;
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
    const [row] = await this.database.query<readonly [{ readonly version: number }]>(
      `select ${territorySql} as version`,
    );
    return row.version;
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
    const versions = await readVersions(this.database.manager);
    if (isUpToDate(this.kept, versions)) return this.kept;
    this.kept = await this.database.transaction('REPEATABLE READ', async (transaction) =>
      bringUpToDate(transaction, this.kept, await readVersions(transaction), await this.clock.now()),
    );
    return this.kept;
  }
}

interface Versions {
  readonly territory: number;
  readonly batches: number;
  readonly balances: readonly (PlaceBalance & { readonly version: number })[];
}

const readVersions = async (manager: EntityManager): Promise<Versions> => {
  const [row] = await manager.query<readonly [Versions]>(versionsSql);
  return row;
};

const territorySql = '(select coalesce(sum(version), 0)::float8 from territory_entries)';

const versionsSql = `
  select ${territorySql} as territory,
    (select coalesce(sum(version), 0)::float8 from batch_states) as batches,
    (select coalesce(json_agg(json_build_object('place', place, 'version', version, 'sealedDrums', sealed_drums,
      'partUsedDrums', part_used_drums, 'emptyDrums', empty_drums, 'bookMillilitres', book_millilitres)
      order by place), '[]') from place_balances) as balances`;

const isUpToDate = (kept: StockNow, { territory, batches, balances }: Versions): boolean =>
  kept.territoryVersion === territory &&
  kept.batchesVersion === batches &&
  balances.every(({ place, version }) => kept.places.get(place)?.version === version);

const bringUpToDate = async (
  transaction: EntityManager,
  kept: StockNow,
  { territory, batches, balances }: Versions,
  now: Date,
): Promise<StockNow> => {
  const changed = balances.filter(({ place, version }) => kept.places.get(place)?.version !== version);
  const read = await readPlaces(
    transaction,
    changed.map(({ place }) => place),
    now,
  );
  return {
    territoryVersion: territory,
    batchesVersion: batches,
    batches: await readBatches(transaction),
    places: new Map(
      balances.map(({ version, ...balance }) => {
        const was = kept.places.get(balance.place);
        return [balance.place, was?.version === version ? was : { version, balance, ...read(balance.place) }];
      }),
    ),
  };
};

const readPlaces = async (transaction: EntityManager, places: readonly string[], now: Date) => {
  if (places.length === 0) return () => ({ drums: new Map<string, DrumState>(), counts: [] });
  const drums: readonly { readonly place: string; readonly data: DrumState }[] = await transaction.query(
    'select place, data from drums where place = any($1) order by number',
    [places],
  );
  const counts: readonly (StandingCount & { readonly place: string })[] = await transaction.query(
    lastCounts,
    [places, now],
  );
  return (place: string): Pick<PlaceStock, 'drums' | 'counts'> => ({
    drums: new Map(drums.filter((drum) => drum.place === place).map(({ data }) => [data.number, data])),
    counts: counts.filter((count) => count.place === place),
  });
};

const lastCounts = `
  select place, data as counted, exists (select from case_closings where count = counts.id) as "isClosed",
    (select coalesce(sum(millilitres), 0)::float8 from drum_steps
     where drum_steps.place = counts.place and from_at <= counts.happened_at
       and (until_at is null or until_at > counts.happened_at)) as "bookMillilitres"
  from counts where stands and place = any($1)
    and not exists (select from counts as later where later.stands and later.place = counts.place
      and later.happened_at <= $2
      and (later.happened_at, later.written_at, later.id) > (counts.happened_at, counts.written_at, counts.id))
  order by place, happened_at, written_at, id`;

const readBatches = async (transaction: EntityManager): Promise<ReadonlyMap<string, BatchState>> => {
  const rows: readonly { readonly data: BatchState }[] = await transaction.query(
    'select data from batch_states',
  );
  return new Map(rows.map(({ data }) => [data.batch, data]));
};

/** The count in force at a moment: the last that had happened by then. */
export const lastCountAt = (place: PlaceStock | undefined, at: IsoInstant): StandingCount | null =>
  place?.counts.findLast(({ counted }) => Date.parse(counted.happenedAt) <= Date.parse(at)) ?? null;
