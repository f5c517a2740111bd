import type { Scenario } from '@drumline/planning';
import type { Batch, Count, Drum, Movement } from '@drumline/stock';
import type { IsoInstant } from '@drumline/units';
import { Injectable } from '@nestjs/common';
import { DataSource, type EntityManager } from 'typeorm';
import type { Actor } from '../audit/audit.service.js';
import { KeptStock } from './kept-stock.js';
import { LedgerService } from './ledger.service.js';
import { openingMovements } from './opening-movements.js';
import { stockOf } from './stock-of.js';

/** The part of a scenario that the ledger gives: drums with fuel, batches with their holds, the last counts. */
export interface CurrentStock {
  readonly drums: readonly Drum[];
  readonly batches: readonly Batch[];
  readonly counts: readonly Count[];
}

type KeptTerritory = Pick<Scenario, 'places' | 'batches' | 'timeZone'>;

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
  open(transaction: EntityManager, scenario: Scenario, by: Actor): Promise<void> {
    return this.ledger.open(transaction, openingMovements(scenario, scenario.asOf), by);
  }

  /**
   * Drums with fuel, batches and counts as they stand now, for a scenario of the territory as it is kept. What was
   * reported at a place that nobody has entered is looked at by a person, not by a plan.
   */
  async picture({ places, batches, timeZone }: KeptTerritory): Promise<CurrentStock> {
    const now = await this.kept.read();
    const known = places.flatMap(({ code }) => now.places.get(code) ?? []);
    const stock = stockOf(known, now.batches, batches, timeZone);
    return {
      drums: stock.drums
        .filter(({ content }) => content === 'filled sealed' || content === 'part used')
        .map(atTheMinute),
      batches: stock.batches.map(atTheMinute),
      counts: stock.counts.map((count) => ({ ...count, at: toTheMinute(count.at) })),
    };
  }

  async isEmpty(): Promise<boolean> {
    const rows: readonly unknown[] = await this.database.query('select from movements limit 1');
    return rows.length === 0;
  }
}

/** A scenario is of a minute; what happened in it has happened. */
const toTheMinute = (at: IsoInstant): IsoInstant => `${at.slice(0, 16)}Z`;

const atTheMinute = <Row extends Drum | Batch>(row: Row): Row =>
  row.held ? { ...row, held: { ...row.held, at: toTheMinute(row.held.at) } } : row;
