import { type MessagePort, parentPort, receiveMessageOnPort, workerData } from 'node:worker_threads';
import { type SearchNews, type SearchProgress, search } from '../index.js';
import type { SearchMessage, SearchTask } from './search-team.js';
import { problemOf } from './shared-problem.js';

const { problem: shared, from, seed, budget, routes, isNear, bound, stop } = workerData as SearchTask;
const problem = problemOf(shared);
const port = parentPort as MessagePort;
let sent = Number.POSITIVE_INFINITY;

const found = search(problem, from, {
  seed,
  budget,
  clock: () => performance.now(),
  shouldStop: () => Atomics.load(stop, 0) === 1,
  onProgress: sendIfBetter,
  news: waitingNews,
  isNear,
  ...(routes && { routes }),
  ...(bound && { bound }),
});
port.postMessage({ kind: 'done', ...found } satisfies SearchMessage);

function sendIfBetter({ plan, best, iterations }: SearchProgress): void {
  if (best >= sent) return;
  sent = best;
  port.postMessage({ kind: 'better', plan, cost: best, iterations } satisfies SearchMessage);
}

/** The last plan and the last routes among the messages that wait; null: there is none. */
function waitingNews(): SearchNews | null {
  const waiting: SearchNews[] = [];
  for (let next = receiveMessageOnPort(port); next; next = receiveMessageOnPort(port))
    waiting.push(next.message as SearchNews);
  return waiting.length === 0 ? null : Object.assign({}, ...waiting);
}
