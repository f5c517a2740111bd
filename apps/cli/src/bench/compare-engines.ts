import type { Problem } from '@drumline/routing';
import {
  type LinearSolution,
  lowerBound,
  programOfBound,
  solveWithHighs,
  solveWithJsLpSolver,
} from '@drumline/routing/milp';
import { printNumber } from '@drumline/units';
import { table } from '../output/table.js';
import { type CachesNetwork, problemOfNetwork } from './caches-network.js';

/** One linear program, solved by both engines. Values in the program's own units; null: no optimum. */
export interface EngineComparison {
  readonly network: string;
  readonly caches: number;
  readonly rows: number;
  readonly columns: number;
  readonly highs: { readonly value: number | null; readonly seconds: number };
  readonly jsLpSolver: { readonly value: number | null; readonly seconds: number };
}

/** The second engine is a plain simplex: it is asked for the small end only. */
const MOST_CACHES = 6;

/** Bounds of the first 1, 2, ... caches of a network, by HiGHS and by javascript-lp-solver. */
export async function compareEngines(network: CachesNetwork): Promise<EngineComparison[]> {
  const compared: EngineComparison[] = [];
  for (let caches = 1; caches <= Math.min(MOST_CACHES, network.caches.length); caches++) {
    const few = { ...network, caches: network.caches.slice(0, caches) };
    compared.push(await compare(network.name, caches, problemOfNetwork(few)));
  }
  return compared;
}

async function compare(network: string, caches: number, problem: Problem): Promise<EngineComparison> {
  const { known } = await lowerBound(problem, { clock: () => performance.now() });
  const program = programOfBound(known);
  return {
    network,
    caches,
    rows: program.rows.length,
    columns: program.columns.length,
    highs: await timed(() => solveWithHighs(program)),
    jsLpSolver: await timed(() => solveWithJsLpSolver(program)),
  };
}

async function timed(solve: () => Promise<LinearSolution>) {
  const began = performance.now();
  const solution = await solve();
  const value = solution.status === 'optimal' ? solution.objective : null;
  return { value, seconds: (performance.now() - began) / 1000 };
}

/** The comparison as a table, the largest difference below. */
export function comparisonLines(compared: readonly EngineComparison[]): string[] {
  const print = (value: number | null) => (value === null ? 'no answer' : printNumber(value, 4));
  const differences = compared.flatMap(({ highs, jsLpSolver }) =>
    highs.value === null || jsLpSolver.value === null ? [] : [Math.abs(highs.value - jsLpSolver.value)],
  );
  return [
    ...table(
      [
        { head: 'network' },
        ...['caches', 'rows', 'columns', 'HiGHS', 'after', 'javascript-lp-solver', 'after'].map((head) => ({
          head,
          align: 'right' as const,
        })),
      ],
      compared.map(({ network, caches, rows, columns, highs, jsLpSolver }) => [
        network,
        printNumber(caches),
        printNumber(rows),
        printNumber(columns),
        print(highs.value),
        `${printNumber(highs.seconds, 2)} s`,
        print(jsLpSolver.value),
        `${printNumber(jsLpSolver.seconds, 2)} s`,
      ]),
    ),
    '',
    `${differences.length} of ${compared.length} solved by both; largest difference ${printNumber(Math.max(0, ...differences), 6)}.`,
  ];
}
