import { availableParallelism } from 'node:os';
import { type OpenOutcome, solveOpen } from '@drumline/routing';
import { highsOpenMethods } from '@drumline/routing/milp';
import { searchOpenInThreads } from '@drumline/routing/threads';
import { table } from '../output/table.js';
import { instanceNames, type PublishedInstance, readPublishedSet } from './read-published-set.js';

export interface PublishedOptions {
  /** For each instance. */
  readonly seconds: number;
  readonly seed: number;
  /** Names of instances; without them the named default. */
  readonly only?: readonly string[];
  /** The full set in place of the named default. */
  readonly full?: boolean;
  readonly shouldStop?: () => boolean;
  /** Told of each instance as it is done. */
  readonly onRow?: (row: PublishedRow) => void;
}

/** What was reached on an instance; money in the set's own units, gaps in percent of the best known value. */
export interface PublishedRow {
  readonly instance: string;
  readonly status: OpenOutcome['status'];
  readonly value: number | null;
  readonly optimum: number | null;
  readonly bestKnown: number | null;
  readonly gapPercent: number | null;
  readonly bound: number | null;
  readonly proven: boolean;
  readonly seconds: number;
  readonly firstPlanSeconds: number | null;
  /** Gap at the first of these seconds, and so on; null: no plan yet. */
  readonly gapPercentAt: readonly { readonly seconds: number; readonly gapPercent: number | null }[];
}

const MARKS = [5, 15, 30, 60];

/** The named default: every size from 5 to 50 sites, 3 and 6 days, 2 to 5 vehicles, and the one with no solution. */
export const defaultInstances: readonly string[] = [
  ...['1n5_2_L3', '2n5_3_L3', '3n5_4_L3', '4n5_5_L3', '5n5_5_L3', '5n5_5_L6'],
  ...['1n5_3_L6', '3n5_2_L6', '4n5_4_L6', '2n10_2_L3', '1n10_3_L3', '4n10_4_L3'],
  ...['3n10_5_L3', '5n10_3_L6', '1n15_5_L3', '3n15_2_L3', '2n15_2_L6', '2n20_2_L6'],
  ...['4n20_5_L6', '3n25_3_L3', '4n25_2_L6', '3n30_3_L6', '5n30_5_L6', '4n35_5_L3'],
  ...['3n40_2_L3', '3n45_3_L3', '1n50_2_L3', '3n50_5_L3', '2n50_3_L6', '4n50_5_L6'],
].map((name) => `S_abs${name}`);

/** Solves instances of the published set in a folder, one after the other, on all processors. */
export async function benchPublished(folder: string, options: PublishedOptions): Promise<PublishedRow[]> {
  const names = options.only ?? (options.full ? instanceNames(folder) : defaultInstances);
  const rows: PublishedRow[] = [];
  for (const instance of readPublishedSet(folder, names)) {
    if (options.shouldStop?.()) break;
    const row = await solveInstance(instance, options);
    rows.push(row);
    options.onRow?.(row);
  }
  return rows;
}

async function solveInstance(instance: PublishedInstance, options: PublishedOptions): Promise<PublishedRow> {
  const { name, problem, optimum, bestKnown } = instance;
  const clock = () => performance.now();
  const began = clock();
  const trace: { seconds: number; best: number }[] = [];
  const { linear, methods } = highsOpenMethods(problem);
  const outcome = await solveOpen(problem, {
    seed: options.seed,
    budget: { seconds: options.seconds },
    clock,
    linear,
    methods: { ...methods, search: searchOpenInThreads(availableParallelism()) },
    ...(options.shouldStop && { shouldStop: options.shouldStop }),
    onProgress: ({ best, seconds }) => trace.push({ best, seconds }),
  });
  const seconds = (clock() - began) / 1000;
  const value = outcome.status === 'solved' ? outcome.cost.total / 100 : null;
  const bound = outcome.status === 'solved' && outcome.bound !== null ? outcome.bound / 100 : null;
  const gapOf = (money: number) =>
    bestKnown === null || !Number.isFinite(money) ? null : (money / bestKnown - 1) * 100;
  const bestAt = (limit: number) =>
    trace.reduce(
      (best, mark) => (mark.seconds <= limit ? Math.min(best, mark.best) : best),
      Number.POSITIVE_INFINITY,
    ) / 100;
  return {
    instance: name,
    status: outcome.status,
    value,
    optimum,
    bestKnown,
    gapPercent: value === null ? null : gapOf(value),
    bound,
    // Plans cost whole cents: less than one from the bound is proven.
    proven: outcome.status === 'infeasible' || (value !== null && bound !== null && value - bound < 0.0099),
    seconds,
    firstPlanSeconds: trace.find(({ best }) => Number.isFinite(best))?.seconds ?? null,
    gapPercentAt: MARKS.filter((mark) => mark <= options.seconds).map((mark) => ({
      seconds: mark,
      gapPercent: gapOf(bestAt(mark)),
    })),
  };
}

/** The rows as a table, with the mean gap by size and days, and of all. */
export function publishedLines(rows: readonly PublishedRow[]): string[] {
  const marks = rows[0]?.gapPercentAt.map(({ seconds }) => seconds) ?? [];
  const right = (head: string) => ({ head, align: 'right' as const });
  const lines = table(
    [
      { head: 'instance' },
      ...['value', 'optimum', 'best known', 'gap %', 'seconds', 'first s'].map(right),
      ...marks.map((mark) => right(`% at ${mark} s`)),
      { head: 'proof' },
    ],
    rows.map((row) => [
      row.instance,
      row.value === null ? row.status : row.value.toFixed(2),
      print(row.optimum, 2),
      print(row.bestKnown, 2),
      print(row.gapPercent, 3),
      print(row.seconds, 1),
      print(row.firstPlanSeconds, 2),
      ...row.gapPercentAt.map(({ gapPercent }) => print(gapPercent, 3)),
      row.proven ? 'proven' : '',
    ]),
  );
  return [...lines, '', ...meanLines(rows)];
}

const print = (value: number | null, decimals: number): string =>
  value === null ? '-' : value.toFixed(decimals);

function meanLines(rows: readonly PublishedRow[]): string[] {
  const gaps = new Map<string, number[]>();
  for (const { instance, gapPercent } of rows) {
    if (gapPercent === null) continue;
    const [, sites, days] = /n(\d+)_\d+_L(\d+)$/.exec(instance) ?? [];
    for (const group of [`${sites} sites x ${days} days`, 'all'])
      gaps.set(group, [...(gaps.get(group) ?? []), gapPercent]);
  }
  const all = gaps.get('all') ?? [];
  gaps.delete('all');
  return [...gaps, ['all', all] as const].map(([group, values]) => {
    const mean = values.reduce((sum, gap) => sum + gap, 0) / values.length;
    return values.length === 0
      ? 'No instance was solved.'
      : `Mean gap, ${group}: ${mean.toFixed(3)} % (${values.length})`;
  });
}
