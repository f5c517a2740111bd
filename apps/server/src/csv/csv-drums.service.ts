import { type Fault, movementBodySchema, shapeFaults } from '@drumline/contract';
import { type Movement, millilitresOf } from '@drumline/stock';
import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { Account } from '../people/account.table.js';
import { ScenariosService } from '../scenarios/scenarios.service.js';
import { LedgerService } from '../stock/ledger.service.js';
import { ClockService } from '../territory/clock.service.js';
import { TerritoryService } from '../territory/territory.service.js';
import { atLine, refuseFaulty, sameTwice } from './csv-faults.js';
import { drumCells, drums, type ReceivedDrum } from './csv-kind.js';
import type { CsvAdded } from './csv-territory.service.js';
import { type Line, readCsv } from './read-csv.js';
import { uuidOf } from './uuid-of.js';
import { writeCsv } from './write-csv.js';

/** Drums as a file: out, as they stand now; in, as received, each line an event of the ledger. */
@Injectable()
export class CsvDrumsService {
  constructor(
    private readonly database: DataSource,
    private readonly territory: TerritoryService,
    private readonly ledger: LedgerService,
    private readonly scenarios: ScenariosService,
    private readonly clock: ClockService,
  ) {}

  async export(): Promise<string> {
    const scenario = await this.scenarios.current();
    return writeCsv(
      drums,
      scenario.drums.map((drum) => drumCells(drum, scenario.asOf)),
    );
  }

  /** The same file again is the same events: nothing is added. */
  async import(text: string, dryRun: boolean, by: Account): Promise<CsvAdded> {
    const { lines, faults } = readCsv<ReceivedDrum>(text, drums);
    const receivedAt = (await this.clock.now()).toISOString();
    const movements = lines.map(({ thing }) => receivedMovement(thing, by, receivedAt));
    const isKnown = await this.known(movements);
    const added = movements.filter(({ id }) => !isKnown(id));
    const newLines = lines.filter((_, index) => !isKnown(movements[index]!.id));
    refuseFaulty([
      ...faults,
      ...sameTwice(lines, ({ number }) => `drum ${number}`),
      ...(await this.faultsOf(newLines, added)),
    ]);
    if (!dryRun) {
      await this.database.transaction(async (transaction) => {
        for (const movement of added) await this.ledger.append(transaction, movement, by);
      });
    }
    return { dryRun, added: added.length, changed: 0, unchanged: movements.length - added.length };
  }

  private async known(movements: readonly Movement[]): Promise<(id: string) => boolean> {
    const rows: readonly { readonly id: string }[] = await this.database.query(
      'select id::text from movements where id = any($1::uuid[])',
      [movements.map(({ id }) => id)],
    );
    const known = new Set(rows.map(({ id }) => id));
    return (id) => known.has(id);
  }

  private async faultsOf(
    lines: readonly Line<ReceivedDrum>[],
    movements: readonly Movement[],
  ): Promise<readonly Fault[]> {
    const { places, batches } = await this.territory.everything(await this.clock.now());
    const rows: readonly { readonly number: string }[] = await this.database.query(
      'select number from drums where number = any($1)',
      [lines.map(({ thing }) => thing.number)],
    );
    const there = new Set(rows.map(({ number }) => number));
    return lines.flatMap(({ line, thing }, index) => {
      const { id: _, receivedAt: __, ...body } = movements[index]!;
      return [
        ...shapeFaults(movementBodySchema, body),
        ...(places.some(({ code }) => code === thing.place) ? [] : [stranger('place', thing.place)]),
        ...(batches.some(({ id }) => id === thing.batch) ? [] : [stranger('batch', thing.batch)]),
        ...(there.has(thing.number) ? [inTheLedger(thing.number)] : []),
      ].map((fault) => atLine(line, fault));
    });
  }
}

const receivedMovement = (drum: ReceivedDrum, by: Account, receivedAt: string): Movement => {
  const { number, litres, ...rest } = drum;
  return {
    id: uuidOf('received drum', drum),
    kind: 'received',
    drum: number,
    millilitres: millilitresOf(litres),
    ...rest,
    writtenAt: rest.happenedAt,
    receivedAt,
    means: 'screen',
    by: by.fullName,
    witnesses: [],
  };
};

const stranger = (column: string, name: string): Fault => ({
  path: column,
  problem: `${name} is not in the territory.`,
  remedy: 'Correct it, or add it to the territory first.',
});

const inTheLedger = (number: string): Fault => ({
  path: 'number',
  problem: `drum ${number} is in the ledger already.`,
  remedy: 'Leave the line out; what happens to a drum that is there is reported as a movement.',
});
