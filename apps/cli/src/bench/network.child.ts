import { readFileSync } from 'node:fs';
import { checkPlan, costOf, handRule, type Progress, solve } from '@drumline/routing';
import { methodsInThreads } from '@drumline/routing/threads';
import { type CachesNetwork, problemOfNetwork } from './caches-network.js';
import { marks, type NetworkRun, type NetworkTask } from './network-run.js';

// One network in a process of its own, so that its memory can be read.
process.once('message', (task: NetworkTask) => {
  void run(task).then((answer) => {
    process.send?.(answer, () => process.exit(0));
  });
});

async function run({ file, seconds, seed, threads }: NetworkTask): Promise<NetworkRun> {
  const began = performance.now();
  const elapsed = () => (performance.now() - began) / 1000;
  const network = JSON.parse(readFileSync(file, 'utf8')) as CachesNetwork;
  const problem = problemOfNetwork(network);
  const firstPlan = { cost: costOf(problem, handRule(problem)).total / 100, seconds: elapsed() };
  const history: Progress[] = [];
  const outcome = await solve(problem, {
    seed,
    clock: () => performance.now(),
    budget: { seconds: seconds - elapsed() },
    methods: methodsInThreads(threads),
    onProgress: (progress) => history.push({ ...progress, seconds: elapsed() }),
  });
  if (outcome.status === 'infeasible') throw new Error(`${file}: ${outcome.reasons.join(' ')}`);
  const { faults, cost } = checkPlan(problem, outcome.plan);
  const { bound, gap } = outcome.proof;
  return {
    name: network.name,
    caches: network.caches.length,
    aircraft: network.aircraft.length,
    days: network.days,
    firstPlan,
    bestAt: bestAt(history, elapsed()),
    cost: cost.total / 100,
    bound: bound === null ? null : bound / 100,
    gap,
    seconds: elapsed(),
    faults: faults.map((fault) => `${fault.where}: ${fault.what}`),
    memoryMegabytes: process.resourceUsage().maxRSS / 1024,
    coreSeconds: coreSeconds(),
    longestSilenceSeconds: longestSilence([...history.map((news) => news.seconds), elapsed()]),
    proof: outcome.proof,
  };
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
