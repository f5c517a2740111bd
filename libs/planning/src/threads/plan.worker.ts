import { parentPort, workerData } from 'node:worker_threads';
import { solve } from '@drumline/routing';
import { highsMethods } from '@drumline/routing/milp';
import { planScenario, type Solver } from '../index.js';
import type { PlanMessage, PlanTask, WorkerTask } from './plan-task.js';

const { scenario, endTarget, seed, budget, weather, stop, first } = workerData as WorkerTask;
const send = (message: PlanMessage) => parentPort?.postMessage(message);
const clock = () => performance.now();
const shouldStop = () => Atomics.load(stop, 0) === 1;

/** Seconds for making the plan less fragile and asking what blocks each shortage, on top of the time for the plan. */
const afterSeconds = 3;
const quick: PlanTask['budget'] = { iterations: 300 };
let planned = Number.POSITIVE_INFINITY;

const solver: Solver = async (problem, effort) => {
  if (effort === 'quick') return solve(problem, { seed, clock, shouldStop, budget: quick });
  const outcome = await solve(problem, {
    seed,
    clock,
    shouldStop,
    budget,
    methods: highsMethods(),
    onProgress: (progress) => send({ kind: 'progress', progress }),
  });
  planned = clock();
  return outcome;
};

if (first) {
  const inHaste = { endTarget, weather: null, isOver: () => true } as const;
  const found = await planScenario(scenario, inHaste, (problem) =>
    solve(problem, { seed, clock, shouldStop, budget: { seconds: 0.5 } }),
  );
  if (found.status === 'solved') send({ kind: 'first', plan: found.plan });
}

const isOver = () => shouldStop() || ('seconds' in budget && clock() - planned > afterSeconds * 1000);
const outcome = await planScenario(scenario, { endTarget, weather, isOver }, solver);
send({ kind: 'outcome', outcome });
