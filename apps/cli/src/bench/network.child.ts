import { Worker } from 'node:worker_threads';
import type { Progress } from '@drumline/routing';
import { keepTelling } from '@drumline/routing/threads';
import {
  type FoundPlan,
  marks,
  type NetworkMessage,
  type NetworkRun,
  type NetworkTask,
} from './network-run.js';

// One network in a process of its own, so that its memory can be read.
process.once('message', (task: NetworkTask) => {
  void run(task).then((answer) => {
    process.send?.(answer, () => process.exit(0));
  });
});

async function run(task: NetworkTask): Promise<NetworkRun> {
  const began = performance.now();
  const elapsed = () => (performance.now() - began) / 1000;
  const history: Progress[] = [];
  const teller = keepTelling(
    (progress) => history.push(progress),
    () => performance.now(),
  );
  const found = await solved(task, teller.hear);
  teller.stop();
  return {
    ...found,
    bestAt: bestAt(history, elapsed()),
    seconds: elapsed(),
    memoryMegabytes: process.resourceUsage().maxRSS / 1024,
    coreSeconds: coreSeconds(),
    longestSilenceSeconds: longestSilence([0, ...history.map((news) => news.seconds), elapsed()]),
  };
}

function solved(task: NetworkTask, hear: (progress: Progress) => void): Promise<FoundPlan> {
  return new Promise((resolve, reject) => {
    const worker = new Worker(new URL('./network.worker.js', import.meta.url), { workerData: task });
    worker.on('message', (message: NetworkMessage) => {
      if (message.kind === 'progress') hear(message.progress);
      else resolve(message.found);
    });
    worker.on('error', reject);
  });
}

function bestAt(history: readonly Progress[], until: number): NetworkRun['bestAt'] {
  return marks.flatMap((mark) => {
    const known = history.filter(({ seconds }) => seconds <= mark).map(({ best }) => best);
    return mark <= until && known.length > 0 ? [{ seconds: mark, cost: Math.min(...known) / 100 }] : [];
  });
}

function coreSeconds(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1e6;
}

const longestSilence = (at: readonly number[]): number =>
  at.slice(1).reduce((longest, seconds, before) => Math.max(longest, seconds - at[before]!), 0);
