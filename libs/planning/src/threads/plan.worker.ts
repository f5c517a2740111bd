import { parentPort, workerData } from 'node:worker_threads';
import { solve } from '@drumline/routing';
import { highsMethods } from '@drumline/routing/milp';
import { methodsInThreads } from '@drumline/routing/threads';
import { planScenario, type Solver } from '../index.js';
import type { PlanMessage, PlanTask, WorkerTask } from './plan-task.js';

const { scenario, endTarget, seed, budget, weather, stop, first } = workerData as WorkerTask;
const send = (message: PlanMessage) => parentPort?.postMessage(message);
const clock = () => performance.now();
const shouldStop = () => Atomics.load(stop, 0) === 1;

// Seconds of the time for the plan: for making it less fragile and asking what blocks each shortage, and for its check and weather.
const AFTER_SECONDS = 2;
const LAST_SECONDS = 0.8;

/** Two cores: bound and search side by side. */
const THREADS = 2;

const began = clock();
const left = (seconds: number) => Math.max(0, seconds - (clock() - began) / 1000);
const quick: PlanTask['budget'] = { iterations: 300 };

const solver: Solver = async (problem, effort) => {
  if (effort === 'quick') return solve(problem, { seed, clock, shouldStop, budget: quick });
  const inTime = 'seconds' in budget;
  return solve(problem, {
    seed,
    clock,
    shouldStop,
    budget: inTime ? { seconds: left(budget.seconds - AFTER_SECONDS - LAST_SECONDS) } : budget,
    methods: inTime ? methodsInThreads(THREADS) : highsMethods(),
    onProgress: (progress) => send({ kind: 'progress', progress }),
  });
};

if (first) {
  const inHaste = { endTarget, weather: null, isOver: () => true } as const;
  const found = await planScenario(scenario, inHaste, (problem) =>
    solve(problem, { seed, clock, shouldStop, budget: { seconds: 0.5 } }),
  );
  if (found.status === 'solved') send({ kind: 'first', plan: found.plan });
}

const isOver = () => shouldStop() || ('seconds' in budget && left(budget.seconds - LAST_SECONDS) === 0);
const outcome = await planScenario(scenario, { endTarget, weather, isOver }, solver);
send({ kind: 'outcome', outcome });
