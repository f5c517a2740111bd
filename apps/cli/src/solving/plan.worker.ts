import { parentPort, workerData } from 'node:worker_threads';
import { planScenario, type Solver } from '@drumline/planning';
import { solve } from '@drumline/routing';
import { highsMethods } from '@drumline/routing/milp';
import type { PlanMessage, PlanTask } from './plan-task.js';

const { scenario, endTarget, seed, budget, weather, stop } = workerData as PlanTask;
const send = (message: PlanMessage) => parentPort?.postMessage(message);
const clock = () => performance.now();
const shouldStop = () => Atomics.load(stop, 0) === 1;

/** Seconds for asking which limit blocks each shortage, on top of the time for the plan. */
const explainSeconds = 3;
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

const isExplainedEnough = () => 'seconds' in budget && clock() - planned > explainSeconds * 1000;
const outcome = await planScenario(scenario, { endTarget, weather, isExplainedEnough }, solver);
send({ kind: 'outcome', outcome });
