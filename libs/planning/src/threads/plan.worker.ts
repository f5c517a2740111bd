import { parentPort, workerData } from 'node:worker_threads';
import { moneyOf, type Proof, solve } from '@drumline/routing';
import { highsMethods } from '@drumline/routing/milp';
import { methodsInThreads } from '@drumline/routing/threads';
import { type AfterStage, planScenario, type Solver } from '../index.js';
import type { PlanMessage, PlanTask, WorkerTask } from './plan-task.js';

const { scenario, endTarget, seed, budget, weather, stop, first } = workerData as WorkerTask;
const send = (message: PlanMessage) => parentPort?.postMessage(message);
const clock = () => performance.now();
const shouldStop = () => Atomics.load(stop, 0) === 1;

// Of the time for the plan: for making it better and less fragile, then asking what blocks each shortage; and for its check and weather.
const AFTER_SHARE = 0.25;
const LEAST_AFTER_SECONDS = 2;
const LAST_SECONDS = 0.8;

/** Two cores: bound and search side by side. */
const THREADS = 2;

const began = clock();
const left = (seconds: number) => Math.max(0, seconds - (clock() - began) / 1000);
const afterSeconds = 'seconds' in budget ? Math.max(LEAST_AFTER_SECONDS, AFTER_SHARE * budget.seconds) : 0;
const quick: PlanTask['budget'] = { iterations: 'seconds' in budget ? 600 : 1000 };

const solver: Solver = async (problem, effort, from) => {
  if (effort === 'quick')
    return solve(problem, { seed, clock, shouldStop, budget: quick, ...(from && { from }) });
  const inTime = 'seconds' in budget;
  const outcome = await solve(problem, {
    seed,
    clock,
    shouldStop,
    budget: inTime ? { seconds: left(budget.seconds - afterSeconds - LAST_SECONDS) } : budget,
    methods: inTime ? methodsInThreads(THREADS) : highsMethods(),
    onProgress: (progress) => send({ kind: 'progress', progress }),
  });
  if (outcome.status === 'solved') tellOfTheRest(outcome.proof, moneyOf(outcome.cost));
  return outcome;
};

/** What follows the search changes no figure by more than a little, and takes a quarter of the time. */
function tellOfTheRest({ objective, bound, gap, seconds }: Proof, bestMoney: number): void {
  send({
    kind: 'progress',
    progress: { stage: 'steadying and checking', seconds, best: objective, bestMoney, bound, gap },
  });
}

if (first) {
  const inHaste = { endTarget, weather: null, isOver: () => true } as const;
  const found = await planScenario(scenario, inHaste, (problem) =>
    solve(problem, { seed, clock, shouldStop, budget: { seconds: 0.5 } }),
  );
  if (found.status === 'solved') send({ kind: 'first', plan: found.plan });
}

/** Asking keeps a third of the time after the search. */
const kept: Record<AfterStage, number> = {
  bettering: LAST_SECONDS + afterSeconds / 3,
  'asking what blocks': LAST_SECONDS,
};
const isOver = (stage: AfterStage) =>
  shouldStop() || ('seconds' in budget && left(budget.seconds - kept[stage]) === 0);
const outcome = await planScenario(scenario, { endTarget, weather, isOver }, solver);
send({ kind: 'outcome', outcome });
