import { type Fault, movementBodySchema, parseScenario, shapeFaults } from '@drumline/contract';
import type { Scenario } from '@drumline/planning';
import { type Movement, millilitresOf } from '@drumline/stock';
import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { Account } from '../people/account.table.js';
import { ScenariosService } from '../scenarios/scenarios.service.js';
import { LedgerService } from '../stock/ledger/ledger.service.js';
import { StockService } from '../stock/stock.service.js';
import { ClockService } from '../territory/clock.service.js';
import { TerritoryService } from '../territory/territory.service.js';
import { atLine, byLine, refuseFaulty, sameTwice } from './csv-faults.js';
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
    private readonly stock: StockService,
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
    const judged = await this.judged(newLines);
    refuseFaulty([
      ...faults,
      ...sameTwice(lines, ({ number }) => `drum ${number}`),
      ...(await this.faultsOf(newLines, added)),
      ...judged.faults,
    ]);
    if (!dryRun) {
      await this.database.transaction(async (transaction) => {
        for (const movement of added) await this.ledger.append(transaction, movement, by);
      });
    }
    const unchanged = movements.length - added.length;
    return { dryRun, added: added.length, changed: 0, unchanged, doubts: judged.doubts };
  }

  /**
   * By the rules of a scenario document, as if the drums stood there already; what the territory had before is not said,
   * and a number that is there twice has words of its own.
   */
  private async judged(lines: readonly Line<ReceivedDrum>[]) {
    const kept = await this.territory.everything(await this.clock.now());
    const stock = { ...kept, ...(await this.stock.picture(kept)) };
    const before = new Set(parseScenario(stock, 'ledger').doubts.map(({ problem }) => problem));
    const parsed = parseScenario({
      ...stock,
      drums: [...stock.drums, ...lines.map(({ thing }) => drumOf(thing))],
    });
    const first = stock.drums.length;
    const atLines = (faults: readonly Fault[]) =>
      faults.map((fault) => byLine(amongNew(fault, first), lines));
    const isNew = ({ problem }: Fault) => !before.has(problem);
    const isOfThese = (fault: Fault) => /^\[\d+\]\./.test(amongNew(fault, first).path);
    return {
      faults: parsed.ok ? [] : atLines(parsed.faults.filter(isOfThese)),
      doubts: atLines(parsed.doubts.filter(isNew)),
    };
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
    const rows: readonly { readonly number: string }[] = await this.database.query(
      'select number from drums where number = any($1)',
      [lines.map(({ thing }) => thing.number)],
    );
    const there = new Set(rows.map(({ number }) => number));
    return lines.flatMap(({ line, thing }, index) => {
      const { id: _, receivedAt: __, ...body } = movements[index]!;
      return [
        ...shapeFaults(movementBodySchema, body),
        ...(there.has(thing.number) ? [inTheLedger(thing.number)] : []),
      ].map((fault) => atLine(line, fault));
    });
  }
}

/** `drums[12].litres` as `[2].litres` where ten drums stood there before; a fault of anything else as it is. */
const amongNew = (fault: Fault, first: number): Fault => {
  const [own, index] = /^drums\[(\d+)\]/.exec(fault.path) ?? [];
  return own === undefined || Number(index) < first
    ? fault
    : { ...fault, path: `[${Number(index) - first}]${fault.path.slice(own.length)}` };
};

const drumOf = ({ openedAt, happenedAt: _, ...drum }: ReceivedDrum): Scenario['drums'][number] => ({
  ...drum,
  ...(openedAt === undefined ? {} : { openedOn: openedAt.slice(0, 10) }),
});

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

const inTheLedger = (number: string): Fault => ({
  path: 'number',
  problem: `drum ${number} is in the ledger already.`,
  remedy: 'Leave the line out; what happens to a drum that is there is reported as a movement.',
});
