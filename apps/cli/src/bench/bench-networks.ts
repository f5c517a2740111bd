import { fork } from 'node:child_process';
import { printNumber } from '@drumline/units';
import { table } from '../output/table.js';
import { percent } from '../output/words.js';
import { marks, type NetworkRun, type NetworkTask } from './network-run.js';

/** The child always runs from the build, also when this file is run from source. */
const childFile = new URL('../../dist/bench/network.child.js', import.meta.url);

/** Plans one network in a process of its own. Rejects where the child fails. */
export function runNetwork(task: NetworkTask): Promise<NetworkRun> {
  return new Promise((resolve, reject) => {
    const child = fork(childFile, { stdio: ['ignore', 'ignore', 'inherit', 'ipc'] });
    child.once('message', (run: NetworkRun) => resolve(run));
    child.once('error', reject);
    child.once('exit', (code) =>
      reject(new Error(`${task.file}: the child ended with code ${code} and no answer.`)),
    );
    child.send(task);
  });
}

/** The runs as a table: first plan, best at each mark, plan, bound, gap, seconds, core seconds, longest silence, memory; the mean gap below. */
export function networkLines(runs: readonly NetworkRun[]): string[] {
  const reached = marks.filter((mark) =>
    runs.some((run) => run.bestAt.some(({ seconds }) => seconds === mark)),
  );
  const gaps = runs.flatMap(({ gap }) => (gap === null ? [] : [gap]));
  return [
    ...table(
      [
        { head: 'network' },
        { head: 'caches', align: 'right' },
        { head: 'days', align: 'right' },
        { head: 'first plan', align: 'right' },
        { head: 'after', align: 'right' },
        ...reached.map((mark) => ({ head: `at ${mark} s`, align: 'right' as const })),
        { head: 'plan', align: 'right' },
        { head: 'bound', align: 'right' },
        { head: 'gap', align: 'right' },
        { head: 'seconds', align: 'right' },
        { head: 'core s', align: 'right' },
        { head: 'silent', align: 'right' },
        { head: 'memory', align: 'right' },
        { head: 'checker' },
      ],
      runs.map((run) => [
        run.name,
        printNumber(run.caches),
        printNumber(run.days),
        printNumber(run.firstPlan.cost),
        `${printNumber(run.firstPlan.seconds, 1)} s`,
        ...reached.map((mark) => {
          const best = run.bestAt.find(({ seconds }) => seconds === mark);
          return best ? printNumber(best.cost) : '';
        }),
        printNumber(run.cost),
        run.bound === null ? '-' : printNumber(run.bound),
        run.gap === null ? '-' : percent(run.gap, 2),
        printNumber(run.seconds, 1),
        printNumber(run.coreSeconds, 1),
        `${printNumber(run.longestSilenceSeconds, 2)} s`,
        `${printNumber(run.memoryMegabytes)} MB`,
        run.faults.length === 0 ? 'no fault' : run.faults[0]!,
      ]),
    ),
    '',
    gaps.length === 0
      ? 'No bound.'
      : `Mean gap ${percent(gaps.reduce((sum, gap) => sum + gap, 0) / gaps.length, 2)}, worst ${percent(Math.max(...gaps), 2)}. Bounds hold for the routes in the pool.`,
  ];
}
