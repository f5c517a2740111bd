import { readFileSync } from 'node:fs';
import { parentPort, workerData } from 'node:worker_threads';
import { checkPlan, costOf, handRule, solve } from '@drumline/routing';
import { methodsInThreads } from '@drumline/routing/threads';
import { type CachesNetwork, problemOfNetwork } from './caches-network.js';
import type { NetworkMessage, NetworkTask } from './network-run.js';

// The solve, in a thread of its own: the one that started it stays free to tell how far it is.
const { file, seconds, seed, threads } = workerData as NetworkTask;
const send = (message: NetworkMessage) => parentPort?.postMessage(message);
const began = performance.now();
const elapsed = () => (performance.now() - began) / 1000;

const network = JSON.parse(readFileSync(file, 'utf8')) as CachesNetwork;
const problem = problemOfNetwork(network);
const firstPlan = { cost: costOf(problem, handRule(problem)).total / 100, seconds: elapsed() };
const outcome = await solve(problem, {
  seed,
  clock: () => performance.now(),
  budget: { seconds: seconds - elapsed() },
  methods: methodsInThreads(threads),
  onProgress: (progress) => send({ kind: 'progress', progress }),
});
if (outcome.status === 'infeasible') throw new Error(`${file}: ${outcome.reasons.join(' ')}`);
const { faults, cost } = checkPlan(problem, outcome.plan);
const { bound, gap } = outcome.proof;
send({
  kind: 'solved',
  found: {
    name: network.name,
    caches: network.caches.length,
    aircraft: network.aircraft.length,
    days: network.days,
    firstPlan,
    cost: cost.total / 100,
    bound: bound === null ? null : bound / 100,
    gap,
    faults: faults.map((fault) => `${fault.where}: ${fault.what}`),
    proof: outcome.proof,
  },
});
