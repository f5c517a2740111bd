import { Worker } from 'node:worker_threads';
import type { Progress } from '@drumline/routing';
import type { FlightPlan, PlanOutcome } from '../index.js';
import type { PlanMessage, PlanTask, WorkerTask } from './plan-task.js';

/** The worker always runs from the build, also when this file is run from source. */
const workerFile = new URL('../../dist/threads/plan.worker.js', import.meta.url);

/**
 * Plans in a thread of its own, so that this one stays free for progress and for a request to stop (HiGHS blocks its
 * thread). Where `onFirst` is given, a checked plan of a second's search comes before the long one, for people to look
 * at meanwhile. Rejects where the planner throws: a defect.
 */
export function planInThread(
  task: PlanTask,
  onProgress: (progress: Progress) => void,
  onFirst?: (plan: FlightPlan) => void,
): Promise<PlanOutcome> {
  return new Promise((resolve, reject) => {
    const workerData: WorkerTask = { ...task, first: onFirst !== undefined };
    const worker = new Worker(workerFile, { workerData });
    worker.on('message', (message: PlanMessage) => {
      if (message.kind === 'progress') onProgress(message.progress);
      else if (message.kind === 'first') onFirst?.(message.plan);
      else resolve(message.outcome);
    });
    worker.on('error', reject);
    worker.on('exit', (code) =>
      reject(new Error(`The planning thread ended with code ${code} and no plan.`)),
    );
  });
}
