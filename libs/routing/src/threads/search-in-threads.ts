import { Worker } from 'node:worker_threads';
import type { Plan, Problem, SearchOptions, SearchResult } from '../index.js';

/** What a search worker is given. */
export interface SearchTask {
  readonly problem: Problem;
  readonly from: Plan;
  readonly seed: number;
  readonly budget: SearchOptions['budget'];
  readonly routes: readonly number[] | null;
  /** Its first figure is set to 1 to end the search. */
  readonly stop: Int32Array<SharedArrayBuffer>;
}

/** What it sends: progress now and then, its best plan at the end. */
export type SearchMessage =
  | {
      readonly kind: 'progress';
      readonly best: number;
      readonly iterations: number;
      readonly seconds: number;
    }
  | { readonly kind: 'done'; readonly plan: Plan; readonly cost: number; readonly iterations: number };

/**
 * The search from several seeds at once, one worker thread each; the best plan of all, the lowest seed's among
 * equals. Ends early when `shouldStop` says so (asked four times a second).
 */
export const searchInThreads =
  (threads: number) =>
  async (problem: Problem, from: Plan, options: SearchOptions): Promise<SearchResult> => {
    const stop = new Int32Array(new SharedArrayBuffer(4));
    const watch = setInterval(() => {
      if (options.shouldStop?.()) Atomics.store(stop, 0, 1);
    }, 250);
    try {
      let best = Number.POSITIVE_INFINITY;
      const onProgress: SearchOptions['onProgress'] = (progress) => {
        best = Math.min(best, progress.best);
        options.onProgress?.({ ...progress, best });
      };
      const seeds = Array.from({ length: threads }, (_, thread) => options.seed + thread);
      const { budget, routes = null } = options;
      const found = await Promise.all(
        seeds.map((seed) => runWorker({ problem, from, seed, budget, routes, stop }, onProgress)),
      );
      const winner = found.reduce((a, b) => (b.cost < a.cost ? b : a));
      return { plan: winner.plan, iterations: found.reduce((sum, one) => sum + one.iterations, 0) };
    } finally {
      clearInterval(watch);
    }
  };

type Done = Extract<SearchMessage, { kind: 'done' }>;

/** The worker always runs from the build, also when this file is run from source. */
const workerFile = new URL('../../dist/threads/search.worker.js', import.meta.url);

function runWorker(task: SearchTask, onProgress: NonNullable<SearchOptions['onProgress']>): Promise<Done> {
  return new Promise((resolve, reject) => {
    const worker = new Worker(workerFile, { workerData: task });
    worker.on('message', (message: SearchMessage) => {
      if (message.kind === 'progress') onProgress(message);
      else resolve(message);
    });
    worker.on('error', reject);
    worker.on('exit', (code) => reject(new Error(`search worker ended with code ${code} and no plan`)));
  });
}
