import { isDeepStrictEqual } from 'node:util';
import type { Fault } from '@drumline/contract';
import type { Scenario } from '@drumline/planning';
import { print } from '@drumline/units';
import { Injectable, type OnModuleInit } from '@nestjs/common';
import { DataSource, type EntityManager } from 'typeorm';
import { Problem } from '../http/problem.js';
import type { Account } from '../people/account.table.js';
import { ProposalsService, type ShownProposal } from '../proposals/proposals.service.js';
import { TerritoryService } from '../territory/territory.service.js';
import {
  type Put,
  type PutAll,
  type PutCounts,
  type Puts,
  TerritoryWritesService,
} from '../territory/territory-writes.service.js';
import { atLine, byLine, refuseFaulty, sameTwice } from './csv-faults.js';
import { helicopterTaskCells, helicopterTasks, stripLimitCells, stripLimits } from './csv-kind.js';
import { type Line, readCsv } from './read-csv.js';
import { uuidOf } from './uuid-of.js';
import { writeCsv } from './write-csv.js';

export type CsvAdded = Omit<PutCounts, 'removed'> & {
  readonly dryRun: boolean;
  /** What looks wrong, by line, and kept the file not out. */
  readonly doubts: readonly Fault[];
};

export type CsvImported = PutCounts & {
  readonly dryRun: boolean;
  /** What is there and has no line in the file, in words: it stays unless it is asked to be removed. */
  readonly notInFile: readonly string[];
  /** What looks wrong, by line, and kept the file not out. */
  readonly doubts: readonly Fault[];
  /** Waits for a second person. */
  readonly proposal?: ShownProposal;
};

export interface HowToImport {
  readonly dryRun: boolean;
  /** What is there and has no line in the file is taken out. */
  readonly remove: boolean;
}

type StripLimit = Scenario['stripLimits'][number];
type HelicopterTask = Scenario['helicopterTasks'][number];

/** What people keep of the territory, as files that a spreadsheet writes and reads. Whole or not at all. */
@Injectable()
export class CsvTerritoryService implements OnModuleInit {
  constructor(
    private readonly database: DataSource,
    private readonly territory: TerritoryService,
    private readonly writes: TerritoryWritesService,
    private readonly proposals: ProposalsService,
  ) {}

  onModuleInit(): void {
    this.proposals.register('strip limits by CSV', async (transaction, payload, by) => {
      const { lines, gone = [] } = payload as unknown as Partial<Puts> & Pick<Puts, 'lines'>;
      await this.writes.putAll(transaction, { kind: limitKind, lines, gone }, by);
    });
  }

  async exportStripLimits(): Promise<string> {
    const entries = await this.territory.all(limitKind);
    return writeCsv(
      stripLimits,
      entries.map(({ data }) => stripLimitCells(data as StripLimit)),
    );
  }

  async exportHelicopterTasks(): Promise<string> {
    const entries = await this.territory.all(taskKind);
    return writeCsv(
      helicopterTasks,
      entries.map(({ id, data }) => helicopterTaskCells(id, data as HelicopterTask)),
    );
  }

  /** Limits take two people: what fits is proposed. */
  async importStripLimits(text: string, { dryRun, remove }: HowToImport, by: Account): Promise<CsvImported> {
    const { lines, faults } = readCsv<StripLimit>(text, stripLimits);
    const puts = lines.map(({ thing }) => ({ id: `${thing.place}-${thing.type}`, data: thing }));
    const absent = notAmong(puts, await this.territory.all(limitKind));
    const all: Puts = { kind: limitKind, lines: puts, gone: remove ? absent.map(({ id }) => id) : [] };
    const tried = await this.tryOut(lines, all, by);
    refuseFaulty([
      ...faults,
      ...sameTwice(lines, ({ place, type }) => `${type} at ${place}`),
      ...tried.faults,
    ]);
    const { added, changed, removed } = tried.counts;
    const notInFile = absent.map(({ data }) => limitWords(data as StripLimit));
    const answer = { dryRun, ...tried.counts, notInFile, doubts: tried.doubts };
    if (dryRun || added + changed + removed === 0) return answer;
    const proposal = await this.proposals.propose(
      {
        carriedOutBy: 'strip limits by CSV',
        act: 'strip limits',
        subject: `strip limits by CSV: ${added} new, ${changed} changed, ${removed} removed`,
        payload: { lines: puts, gone: all.gone },
      },
      by,
    );
    return { ...answer, proposal };
  }

  /** A line with an id changes that task. One without, like a task that is there, is that task. */
  async importHelicopterTasks(
    text: string,
    { dryRun, remove }: HowToImport,
    by: Account,
  ): Promise<CsvImported> {
    const { lines, faults } = readCsv<HelicopterTask>(text, helicopterTasks);
    const there = await this.territory.all(taskKind);
    const known = new Set(there.map(({ id }) => id));
    const strangers = lines.filter(({ cells: { id } }) => id !== undefined && !known.has(String(id)));
    const puts = lines.map((line, index) => ({ id: taskId(lines, index, there), data: line.thing }));
    const absent = notAmong(puts, there);
    const all: Puts = { kind: taskKind, lines: puts, gone: remove ? absent.map(({ id }) => id) : [] };
    const write = (transaction: EntityManager) => this.writes.putAll(transaction, all, by);
    const tried = await this.tryOut(lines, all, by);
    const twice = sameTwice(lines, (_, { id }) => (id === undefined ? null : `task ${id}`));
    refuseFaulty([
      ...faults,
      ...strangers.map(({ line }) => atLine(line, noSuchTask)),
      ...twice,
      ...tried.faults,
    ]);
    if (!dryRun) await this.database.transaction(write);
    const notInFile = absent.map(({ data }) => taskWords(data as HelicopterTask));
    return { dryRun, ...tried.counts, notInFile, doubts: tried.doubts };
  }

  /** What it would do, and what would be wrong with the territory then; nothing is written. */
  private async tryOut(lines: readonly Line<unknown>[], all: Puts, by: Account): Promise<Tried> {
    // A line about what an earlier one is about is a fault of its own, and said once.
    const isFirst = all.lines.map(({ id }, index) => all.lines.findIndex((put) => put.id === id) === index);
    const once = { ...all, lines: all.lines.filter((_, index) => isFirst[index]) };
    const linesOnce = lines.filter((_, index) => isFirst[index]);
    const runner = this.database.createQueryRunner();
    try {
      await runner.startTransaction();
      const { counts, doubts } = await this.writes.putAll(runner.manager, once, by);
      return { counts, doubts: doubts.map((doubt) => byLine(doubt, linesOnce)), faults: [] };
    } catch (error) {
      if (!(error instanceof Problem) || error.kind !== 'faults') throw error;
      return { counts: nothing, doubts: [], faults: error.faults.map((fault) => byLine(fault, linesOnce)) };
    } finally {
      await runner.rollbackTransaction();
      await runner.release();
    }
  }
}

interface Tried extends PutAll {
  readonly faults: readonly Fault[];
}

const limitKind = 'strip-limits';
const taskKind = 'helicopter-tasks';
const nothing: PutCounts = { added: 0, changed: 0, unchanged: 0, removed: 0 };

const notAmong = (
  lines: readonly Put[],
  there: readonly { readonly id: string; readonly data: unknown }[],
): typeof there => {
  const ids = new Set(lines.map(({ id }) => id));
  return there.filter(({ id }) => !ids.has(id));
};

const limitWords = ({ place, type }: StripLimit): string => `${type} at ${place}`;
const taskWords = ({ date, helicopter, place, programme, litres }: HelicopterTask): string =>
  `${date} ${helicopter} at ${place}, ${programme}, ${print(litres, 'L')}`;

/** Two lines that say the same are two tasks: the first such line is the first such task. */
const taskId = (
  lines: readonly Line<HelicopterTask>[],
  index: number,
  there: readonly { readonly id: string; readonly data: unknown }[],
): string => {
  const { cells, thing } = lines[index]!;
  if (cells.id !== undefined) return String(cells.id);
  const nth = lines.slice(0, index).filter((line) => isDeepStrictEqual(line.thing, thing)).length;
  const like = there.filter(({ data }) => isDeepStrictEqual(data, thing));
  return like[nth]?.id ?? uuidOf('helicopter task', thing, nth);
};

const noSuchTask: Fault = {
  path: 'id',
  problem: 'there is no task with this id.',
  remedy: 'Leave the cell empty for a new task.',
};
