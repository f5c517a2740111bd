import { Worker } from 'node:worker_threads';
import { keepTelling, type ToldProgress } from '@drumline/routing/threads';
import type { FlightPlan, PlanOutcome } from '../index.js';
import type { PlanMessage, PlanTask, WorkerTask } from './plan-task.js';

/** The worker always runs from the build, also when this file is run from source. */
const workerFile = new URL('../../dist/threads/plan.worker.js', import.meta.url);

/**
 * Plans in a thread of its own, so that this one stays free for a request to stop, and for progress: told twice a second
 * whatever that thread is at (HiGHS blocks it, and so does the check). Where `onFirst` is given, a checked plan of a second's search comes before the long one, for people to look
 * at meanwhile. Rejects where the planner throws: a defect.
 */
export function planInThread(
  task: PlanTask,
  onProgress: (progress: ToldProgress) => void,
  onFirst?: (plan: FlightPlan) => void,
): Promise<PlanOutcome> {
  return new Promise((resolve, reject) => {
    const workerData: WorkerTask = { ...task, first: onFirst !== undefined };
    const worker = new Worker(workerFile, { workerData });
    const teller = keepTelling(onProgress, () => performance.now());
    worker.on('message', (message: PlanMessage) => {
      if (message.kind === 'progress') teller.hear(message.progress);
      else if (message.kind === 'first') onFirst?.(message.plan);
      else {
        teller.stop();
        resolve(message.outcome);
      }
    });
    worker.on('error', reject);
    worker.on('exit', (code) => {
      teller.stop();
      reject(new Error(`The planning thread ended with code ${code} and no plan.`));
    });
  });
}
