import { Worker } from 'node:worker_threads';
import type { Bound, MethodLimits, Methods, Plan, Polished } from '../index.js';
import { type SharedProblem, shareProblem } from './shared-problem.js';

/** What the worker is given at the start. */
export interface HighsWorld {
  readonly problem: SharedProblem;
  /** Its first figure is set to 1 to end what is being done. */
  readonly stop: Int32Array<SharedArrayBuffer>;
}

/** What it is asked: one thing at a time. In between it is sent the best plan known. */
export type HighsRequest =
  | { readonly kind: 'bound'; readonly plan: Plan; readonly seconds: number | null; readonly beside: boolean }
  | { readonly kind: 'polish'; readonly plan: Plan; readonly seconds: number | null }
  | { readonly kind: 'latest'; readonly plan: Plan };

export type HighsMessage =
  | { readonly kind: 'progress'; readonly found: Parameters<MethodLimits['onProgress']>[0] }
  | { readonly kind: 'bound'; readonly answer: Bound }
  | { readonly kind: 'polish'; readonly answer: Polished };

/** The worker always runs from the build, also when this file is run from source. */
const workerFile = new URL('../../dist/threads/highs.worker.js', import.meta.url);

/** Milliseconds between two looks at the clock, and until a worker that was told to stop is ended. */
const WATCH_EVERY = 100;
const GRACE = 600;

/**
 * Bound and polish of `highsMethods` in a worker thread: they run beside the search, and can be stopped within a
 * second whatever HiGHS is at.
 */
export function highsInThread(): Required<Pick<Methods, 'bound' | 'polish' | 'release'>> {
  const stop = new Int32Array(new SharedArrayBuffer(4));
  let worker: Worker | null = null;
  return {
    bound: async (problem, limits) => {
      worker = new Worker(workerFile, {
        workerData: { problem: shareProblem(problem), stop } satisfies HighsWorld,
      });
      const request = {
        kind: 'bound',
        plan: limits.latest(),
        seconds: limits.seconds,
        beside: limits.beside,
      } as const;
      const answer = await ask(worker, stop, request, limits);
      const found = answer?.kind === 'bound' ? answer.answer : { bound: null, worthPolish: false };
      // Its memory is better used by the search.
      if (found.worthPolish === false) await worker.terminate();
      return found;
    },
    polish: async (_, plan, limits) => {
      const answer =
        worker && (await ask(worker, stop, { kind: 'polish', plan, seconds: limits.seconds }, limits));
      return answer?.kind === 'polish' ? answer.answer : { plan, bound: null };
    },
    release: () => void worker?.terminate(),
  };
}

type Answer = Exclude<HighsMessage, { kind: 'progress' }>;

/** The worker's answer; null where it was ended before it had one. */
function ask(
  worker: Worker,
  stop: Int32Array,
  request: HighsRequest,
  limits: MethodLimits,
): Promise<Answer | null> {
  const began = limits.clock();
  let stoppedAt: number | null = null;
  let latest = request.plan;
  Atomics.store(stop, 0, 0);
  return new Promise<Answer | null>((resolve, reject) => {
    const watch = setInterval(() => {
      const now = limits.clock();
      const isLate = limits.seconds !== null && now - began > limits.seconds * 1000 + GRACE;
      if (limits.shouldStop() || isLate) {
        stoppedAt ??= now;
        Atomics.store(stop, 0, 1);
        if (now - stoppedAt > GRACE) void worker.terminate();
      } else if (limits.latest() !== latest) {
        latest = limits.latest();
        worker.postMessage({ kind: 'latest', plan: latest } satisfies HighsRequest);
      }
    }, WATCH_EVERY);
    const end = (settle: () => void) => {
      clearInterval(watch);
      worker.removeAllListeners();
      settle();
    };
    worker.on('message', (message: HighsMessage) => {
      if (message.kind === 'progress') limits.onProgress(message.found);
      else end(() => resolve(message));
    });
    worker.on('error', (error) => end(() => reject(error)));
    worker.on('exit', () => end(() => resolve(null)));
    worker.postMessage(request);
  });
}
