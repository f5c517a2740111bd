import { parentPort, workerData } from 'node:worker_threads';
import { searchOpen } from '../index.js';
import { solveWithHighs } from '../milp/index.js';
import type { OpenSearchMessage, OpenSearchTask } from './search-open-in-threads.js';

const { problem, seed, budget, stop } = workerData as OpenSearchTask;
const send = (message: OpenSearchMessage) => parentPort?.postMessage(message);

const found = await searchOpen(problem, {
  seed,
  budget,
  clock: () => performance.now(),
  shouldStop: () => Atomics.load(stop, 0) === 1,
  onProgress: (progress) => send({ kind: 'progress', ...progress }),
  linear: solveWithHighs,
});
send({ kind: 'done', ...found });
