import type { Scenario } from '@drumline/planning';
import {
  type Batch,
  type Count,
  type Drum,
  type LedgerState,
  type Movement,
  replay,
  toBatches,
  toCounts,
  toDrums,
} from '@drumline/stock';
import { Injectable } from '@nestjs/common';
import { DataSource, type EntityManager } from 'typeorm';
import type { Actor } from '../audit/audit.service.js';
import { movementTable, type StoredMovement } from './movement.table.js';
import { openingMovements } from './opening-movements.js';

/** The part of a scenario that the ledger gives: drums with fuel, batches with their holds, the last counts. */
export interface CurrentStock {
  readonly drums: readonly Drum[];
  readonly batches: readonly Batch[];
  readonly counts: readonly Count[];
}

@Injectable()
export class StockService {
  constructor(private readonly database: DataSource) {}

  /** Appends; a movement whose id is there already is left out. Returns the ids that were new. */
  async append(
    transaction: EntityManager,
    movements: readonly Movement[],
    by: Actor,
  ): Promise<readonly string[]> {
    const added: string[] = [];
    for (let at = 0; at < movements.length; at += 500) {
      const done = await transaction
        .createQueryBuilder()
        .insert()
        .into(movementTable)
        .values(
          movements
            .slice(at, at + 500)
            .map((movement) => ({ ...rowOf(movement, by), data: movement as object })),
        )
        .orIgnore()
        .returning('id')
        .execute();
      added.push(...(done.raw as readonly { readonly id: string }[]).map(({ id }) => id));
    }
    return added;
  }

  /** The first content of the ledger: the stock of a scenario. */
  async open(transaction: EntityManager, scenario: Scenario, by: Actor): Promise<void> {
    await this.append(transaction, openingMovements(scenario, scenario.asOf), by);
  }

  /** The ledger as everything received so far makes it. */
  async ledger(): Promise<LedgerState> {
    const rows = await this.database
      .getRepository(movementTable)
      .find({ select: { data: true }, order: { receivedAt: 'ASC', id: 'ASC' } });
    return replay(rows.map(({ data }) => data));
  }

  /** Drums, batches and counts as they stand now, for a scenario; `registered` are the batches of the territory. */
  async picture(registered: readonly Batch[], timeZone: string): Promise<CurrentStock> {
    const ledger = await this.ledger();
    return {
      drums: toDrums(ledger, timeZone).filter(
        ({ content }) => content === 'filled sealed' || content === 'part used',
      ),
      batches: toBatches(ledger, registered),
      counts: toCounts(ledger),
    };
  }

  isEmpty = async (): Promise<boolean> => !(await this.database.getRepository(movementTable).exists());
}

const rowOf = (movement: Movement, by: Actor): StoredMovement => ({
  id: movement.id,
  kind: movement.kind,
  drum: 'drum' in movement ? movement.drum : null,
  batch: 'batch' in movement ? movement.batch : null,
  place: 'place' in movement ? movement.place : null,
  flight: 'flight' in movement ? movement.flight : null,
  corrects: movement.kind === 'corrected' ? movement.corrects : null,
  happenedAt: new Date(movement.happenedAt),
  writtenAt: new Date(movement.writtenAt),
  receivedAt: new Date(movement.receivedAt),
  means: movement.means,
  accountId: by.id,
  data: movement,
});
