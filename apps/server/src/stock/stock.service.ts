import type { FlightState, Scenario } from '@drumline/planning';
import {
  type Batch,
  type BatchState,
  type Count,
  type Drum,
  type DrumState,
  type Movement,
  type MovementKind,
  standingHold,
  type Where,
} from '@drumline/stock';
import type { IsoInstant } from '@drumline/units';
import { Injectable } from '@nestjs/common';
import { DataSource, type EntityManager } from 'typeorm';
import type { Actor } from '../audit/audit.service.js';
import { KeptStock } from './figures/kept-stock.js';
import { changePlacesHomeSql, isDown, ridingHomeSql } from './figures/riding-home.js';
import { stockOf } from './figures/stock-of.js';
import { LedgerService } from './ledger/ledger.service.js';
import { openingMovements } from './ledger/opening-movements.js';

/** The part of a scenario that the ledger gives: drums with fuel, batches with their holds, the last counts. */
export interface CurrentStock {
  readonly drums: readonly Drum[];
  readonly batches: readonly Batch[];
  readonly counts: readonly Count[];
}

/** What of a drum does not depend on where it is. */
export type KnownDrum = Pick<Drum, 'number' | 'batch'> & {
  readonly [Weight in 'tareKg' | 'grossKg']: Drum[Weight] | null;
};

/** Where a drum is, by what it came to be there, and whether it is held, by itself or with its batch. */
export interface Whereabouts {
  readonly where: Where;
  readonly since: MovementKind | null;
  readonly isHeld: boolean;
}

/** A drum that may not be used, and what holds it: "Batch J27-041 is held: water in the sample." */
export interface HeldDrum {
  readonly number: string;
  readonly held: string;
}

type KeptTerritory = Pick<Scenario, 'places' | 'batches' | 'bases' | 'policy' | 'timeZone'>;

/** What other features ask of the stock. */
@Injectable()
export class StockService {
  constructor(
    private readonly database: DataSource,
    private readonly ledger: LedgerService,
    private readonly kept: KeptStock,
  ) {}

  /** Appends; a movement whose id is there already is left out. Returns the ids that were new. */
  async append(
    transaction: EntityManager,
    movements: readonly Movement[],
    by: Actor,
  ): Promise<readonly string[]> {
    const added: string[] = [];
    for (const movement of movements) {
      const { isNew } = await this.ledger.append(transaction, movement, by);
      if (isNew) added.push(movement.id);
    }
    return added;
  }

  /** The first content of the ledger: the stock of a scenario. */
  open(transaction: EntityManager, scenario: Scenario): Promise<void> {
    return this.ledger.open(transaction, openingMovements(scenario, scenario.asOf));
  }

  /**
   * Drums with fuel, batches and counts as they stand now, for a scenario of the territory as it is kept. What was
   * reported at a place that nobody has entered is looked at by a person, not by a plan.
   */
  async picture(territory: KeptTerritory): Promise<CurrentStock> {
    const { places, batches, timeZone } = territory;
    const now = await this.kept.read();
    const known = places.flatMap(({ code }) => now.places.get(code) ?? []);
    const stock = stockOf(known, now.batches, batches, timeZone);
    return {
      drums: stock.drums
        .filter(({ content }) => content === 'filled sealed' || content === 'part used')
        .map(atTheMinute),
      batches: stock.batches.map((batch) => atTheMinute(withFigures(batch, territory))),
      counts: stock.counts.map((count) => ({ ...count, at: toTheMinute(count.at) })),
    };
  }

  /** Batch and weights of these drums, wherever they are; those without a batch are left out. */
  async drumsByNumber(
    transaction: EntityManager,
    numbers: readonly string[],
  ): Promise<ReadonlyMap<string, KnownDrum>> {
    if (numbers.length === 0) return new Map();
    const rows: readonly KnownDrum[] = await transaction.query(
      `select number, data ->> 'batch' as batch, (data ->> 'tareKg')::float8 as "tareKg",
         (data ->> 'grossKg')::float8 as "grossKg"
       from drums where number = any($1) and data ->> 'batch' is not null`,
      [numbers],
    );
    return new Map(rows.map((row) => [row.number, row]));
  }

  async whereabouts(numbers: readonly string[]): Promise<ReadonlyMap<string, Whereabouts>> {
    if (numbers.length === 0) return new Map();
    const rows: readonly (Omit<Whereabouts, 'isHeld'> & { readonly number: string })[] =
      await this.database.query(
        `select number, data -> 'where' as where, (select kind from movements where id =
         (select movement from drum_steps where drum = number order by step desc limit 1)) as since
       from drums where number = any($1)`,
        [numbers],
      );
    const held = new Set((await this.held(this.database.manager, numbers)).map(({ number }) => number));
    return new Map(
      rows.map(({ number, where, since }) => [number, { where, since, isHeld: held.has(number) }]),
    );
  }

  /** Of these drums, those on hold, rejected ones with them. */
  async held(transaction: EntityManager, numbers: readonly string[]): Promise<readonly HeldDrum[]> {
    if (numbers.length === 0) return [];
    const rows: readonly { readonly drum: DrumState; readonly batch: BatchState | null }[] =
      await transaction.query(
        `select drums.data as drum, batch_states.data as batch from drums
         left join batch_states on batch_states.batch = drums.data ->> 'batch'
         where number = any($1) order by number`,
        [numbers],
      );
    return rows.flatMap(({ drum: { number, batch: of, fitness }, batch }) => {
      const ofBatch = standingHold(batch ?? undefined);
      if (ofBatch !== null) return [{ number, held: `Batch ${of} is held: ${ofBatch.reason}.` }];
      const hold = fitness.condemned ?? fitness.held;
      return hold === null ? [] : [{ number, held: `Drum ${number} is held: ${hold.reason}.` }];
    });
  }

  /** Of these drums, those that are aboard, also on the way home. */
  async aboard(transaction: EntityManager, numbers: readonly string[]): Promise<readonly string[]> {
    if (numbers.length === 0) return [];
    const rows: readonly { readonly number: string }[] = await transaction.query(
      `select number from drums ${ridingHomeSql}
       where number = any($1) and coalesce(riding.where, data -> 'where') ->> 'kind' = 'aboard'`,
      [numbers],
    );
    return rows.map(({ number }) => number);
  }

  /** What rides home stands there once its flight is down. */
  async flightMoved(
    transaction: EntityManager,
    { id, from, to }: { readonly id: string; readonly from: FlightState; readonly to: FlightState },
  ): Promise<void> {
    if (isDown(from) !== isDown(to)) await transaction.query(changePlacesHomeSql, [id]);
  }

  async isEmpty(): Promise<boolean> {
    const rows: readonly unknown[] = await this.database.query('select from movements limit 1');
    return rows.length === 0;
  }
}

/** A scenario takes no batch without a density and a base; one that nobody has entered is past its retest date anyway. */
const withFigures = (batch: Batch, { policy, bases }: KeptTerritory): Batch =>
  batch.filledAt.length > 0
    ? batch
    : {
        ...batch,
        densityAt15KgPerLitre: policy.bookDensityKgPerLitre,
        filledAt: bases.slice(0, 1).map(({ place }) => place),
      };

/** A scenario is of a minute; what happened in it has happened. */
const toTheMinute = (at: IsoInstant): IsoInstant => `${at.slice(0, 16)}Z`;

const atTheMinute = <Row extends Drum | Batch>(row: Row): Row =>
  row.held ? { ...row, held: { ...row.held, at: toTheMinute(row.held.at) } } : row;
