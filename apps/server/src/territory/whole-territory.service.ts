import { isDeepStrictEqual } from 'node:util';
import type { Scenario } from '@drumline/planning';
import { Injectable } from '@nestjs/common';
import type { EntityManager } from 'typeorm';
import type { Actor } from '../audit/audit.service.js';
import { entryTable } from './entry.table.js';
import { oneAtATime, writeEntry } from './kept-entries.js';
import { type ClockBy, thingsOf } from './things-of.js';

/** A territory, checked before as a scenario, and what its clock goes by from now on. */
export interface WholeTerritory {
  readonly scenario: Scenario;
  readonly clock: ClockBy;
}

/** The territory as one: brought in, and taken out again. */
@Injectable()
export class WholeTerritoryService {
  /** Puts a whole territory in the place of the one that is there. */
  async replaceAll(
    transaction: EntityManager,
    { scenario, clock }: WholeTerritory,
    by: Actor,
  ): Promise<void> {
    await oneAtATime(transaction);
    const there = await transaction.find(entryTable);
    const before = new Map(there.map((entry) => [`${entry.kind}/${entry.id}`, entry]));
    for (const [position, { kind, id, data }] of thingsOf(scenario, clock).entries()) {
      const old = before.get(`${kind}/${id}`) ?? null;
      before.delete(`${kind}/${id}`);
      if (old !== null && !old.removed && isDeepStrictEqual(old.data, data)) continue;
      await writeEntry(transaction, { kind, id, data, removed: false, position }, { before: old, by });
    }
    for (const gone of before.values()) {
      if (!gone.removed) await writeEntry(transaction, { ...gone, removed: true }, { before: gone, by });
    }
  }

  /** Takes everything out; the history stays. */
  async removeAll(transaction: EntityManager, by: Actor): Promise<void> {
    await oneAtATime(transaction);
    for (const entry of await transaction.findBy(entryTable, { removed: false }))
      await writeEntry(transaction, { ...entry, removed: true }, { before: entry, by });
  }
}
