import { type MessagePort, parentPort, receiveMessageOnPort, workerData } from 'node:worker_threads';
import type { MethodLimits, Plan } from '../index.js';
import { highsMethods } from '../milp/index.js';
import type { HighsMessage, HighsRequest, HighsWorld } from './highs-in-thread.js';

const { problem, stop } = workerData as HighsWorld;
const port = parentPort as MessagePort;
const send = (message: HighsMessage) => port.postMessage(message);
const methods = highsMethods();

let latest: Plan;

port.on('message', (request: HighsRequest) => {
  latest = request.plan;
  if (request.kind === 'bound')
    void methods.bound(problem, limitsOf(request)).then((answer) => send({ kind: 'bound', answer }));
  if (request.kind === 'polish')
    void methods
      .polish(problem, request.plan, limitsOf(request))
      .then((answer) => send({ kind: 'polish', answer }));
});

function limitsOf({ seconds }: { seconds: number | null }): MethodLimits {
  return {
    seconds,
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
