import { type MessagePort, parentPort, receiveMessageOnPort, workerData } from 'node:worker_threads';
import type { MethodLimits, Plan } from '../index.js';
import { highsMethods } from '../milp/index.js';
import type { HighsMessage, HighsRequest, HighsWorld } from './highs-in-thread.js';
import { problemOf } from './shared-problem.js';

const { problem: shared, stop } = workerData as HighsWorld;
const problem = problemOf(shared);
const port = parentPort as MessagePort;
const send = (message: HighsMessage) => port.postMessage(message);
const methods = highsMethods();

let latest: Plan;

port.on('message', (request: HighsRequest) => {
  latest = request.plan;
  if (request.kind === 'bound') void bound(request);
  if (request.kind === 'polish') void polish(request);
});

async function bound({ seconds, beside }: Extract<HighsRequest, { kind: 'bound' }>): Promise<void> {
  send({ kind: 'bound', answer: await methods.bound(problem, limitsOf(seconds, beside)) });
}

async function polish({ plan, seconds }: Extract<HighsRequest, { kind: 'polish' }>): Promise<void> {
  send({ kind: 'polish', answer: await methods.polish(problem, plan, limitsOf(seconds, false)) });
}

function limitsOf(seconds: number | null, beside: boolean): MethodLimits {
  return {
    seconds,
    beside,
    clock: () => performance.now(),
    shouldStop: () => Atomics.load(stop, 0) === 1,
    latest: () => {
      for (let next = receiveMessageOnPort(port); next; next = receiveMessageOnPort(port))
        latest = (next.message as HighsRequest).plan;
      return latest;
    },
    onProgress: (found) => send({ kind: 'progress', found }),
  };
}
