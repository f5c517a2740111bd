import { parentPort, workerData } from 'node:worker_threads';
import { search } from '../index.js';
import type { SearchMessage, SearchTask } from './search-in-threads.js';

const { problem, from, seed, budget, routes, stop } = workerData as SearchTask;
const send = (message: SearchMessage) => parentPort?.postMessage(message);

const found = search(problem, from, {
  seed,
  budget,
  clock: () => performance.now(),
  shouldStop: () => Atomics.load(stop, 0) === 1,
  onProgress: (progress) => send({ kind: 'progress', ...progress }),
  ...(routes && { routes }),
});
send({ kind: 'done', plan: found.plan, cost: found.cost, iterations: found.iterations });
