import { Worker } from 'node:worker_threads';
import type {
  OpenPlan,
  OpenProblem,
  OpenSearchOptions,
  OpenSearchProgress,
  OpenSearchResult,
} from '../index.js';

/** What a worker of the open search is given. */
export interface OpenSearchTask {
  readonly problem: OpenProblem;
  readonly seed: number;
  readonly budget: OpenSearchOptions['budget'];
  /** Its first figure is set to 1 to end the search. */
  readonly stop: Int32Array<SharedArrayBuffer>;
}

/** What it sends: progress now and then, its best plan at the end. */
export type OpenSearchMessage =
  | ({ readonly kind: 'progress' } & OpenSearchProgress)
  | {
      readonly kind: 'done';
      readonly plan: OpenPlan | null;
      readonly cost: number;
      readonly iterations: number;
    };

/**
 * The open search from several seeds at once, one worker thread each, quantities by HiGHS; the best plan of all, the
 * lowest seed's among equals. Ends early when `shouldStop` says so (asked four times a second).
 */
export const searchOpenInThreads =
  (threads: number) =>
  async (problem: OpenProblem, options: OpenSearchOptions): Promise<OpenSearchResult> => {
    const stop = new Int32Array(new SharedArrayBuffer(4));
    const watch = setInterval(() => {
      if (options.shouldStop?.()) Atomics.store(stop, 0, 1);
    }, 250);
    try {
      let best = Number.POSITIVE_INFINITY;
      const onProgress = (progress: OpenSearchProgress) => {
        best = Math.min(best, progress.best);
        options.onProgress?.({ ...progress, best });
      };
      const { budget } = options;
      const seeds = Array.from({ length: threads }, (_, thread) => options.seed + thread);
      const found = await Promise.all(
        seeds.map((seed) => runWorker({ problem, seed, budget, stop }, onProgress)),
      );
      const { plan, cost } = found.reduce((a, b) => (b.cost < a.cost ? b : a));
      return { plan, cost, iterations: found.reduce((sum, one) => sum + one.iterations, 0) };
    } finally {
      clearInterval(watch);
    }
  };

/** The worker always runs from the build, also when this file is run from source. */
const workerFile = new URL('../../dist/threads/search-open.worker.js', import.meta.url);

function runWorker(
  task: OpenSearchTask,
  onProgress: (progress: OpenSearchProgress) => void,
): Promise<OpenSearchResult> {
  return new Promise((resolve, reject) => {
    const worker = new Worker(workerFile, { workerData: task });
    worker.on('message', (message: OpenSearchMessage) => {
      if (message.kind === 'progress') onProgress(message);
      else resolve(message);
    });
    worker.on('error', reject);
    worker.on('exit', (code) =>
      reject(new Error(`open search worker ended with code ${code} and no answer`)),
    );
  });
}
