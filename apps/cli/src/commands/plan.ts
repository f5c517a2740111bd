import type { PlanDocument } from '@drumline/contract';
import { type EndTarget, type FlightPlan, planByHand, type Scenario } from '@drumline/planning';
import { type PlanTask, planInThread } from '@drumline/planning/threads';
import { CommandEnd, exitCodes } from '../exit-codes.js';
import { fingerprint } from '../fingerprint.js';
import { loadScenario, type ScenarioOptions } from '../load-scenario.js';
import { planLines } from '../output/plan-report.js';
import { progressLine, progressText } from '../output/progress-line.js';
import { writeAnswer } from '../output/write-answer.js';
import { writeWhole } from '../write-whole.js';

interface PlanCommandOptions extends ScenarioOptions {
  readonly json?: boolean;
  readonly seconds: number;
  readonly iterations?: number;
  readonly seed: number;
  readonly end: 'both' | 'hand-plan' | 'minimum' | 'operator';
  readonly out?: string;
}

/** `drumline plan`: the plan, beside it the plan that only keeps the minimums, and the plan made by hand. */
export async function plan(path: string, options: PlanCommandOptions): Promise<void> {
  const scenario = loadScenario(path, options);
  const { plans, interrupted } = await solveAll(scenario, options);
  const [first, ...others] = plans;
  const byHand = scenario.handPlan.length === 0 ? [] : [handPlan(scenario)];
  const document: PlanDocument = {
    format: 'drumline-plan/1',
    madeFrom: fingerprint(scenario),
    plan: first!.plan,
    beside: [...others, ...byHand],
  };
  if (options.out !== undefined) writeWhole(options.out, `${JSON.stringify(document, null, 2)}\n`);
  writeAnswer(
    options,
    () => document,
    () => planLines(scenario, first!.name, document),
  );
  if (interrupted) throw new CommandEnd(exitCodes.interrupted, 'Stopped: the best plan so far is shown.');
}

/** Fortnights of weather that every plan is judged by: the same for all. */
const weather = { fortnights: 1000, seed: 1 };

const planNames: Record<EndTarget, string> = {
  'hand plan': 'closing stock as the hand plan',
  operator: "closing stock as the operator's targets",
  minimum: 'minimum only',
};

/** One thread a plan; Ctrl-C asks each for its best plan so far. */
async function solveAll(scenario: Scenario, options: PlanCommandOptions) {
  const stop = new Int32Array(new SharedArrayBuffer(4));
  const line = progressLine(process.stderr);
  let interrupted = false;
  const onInterrupt = () => {
    interrupted = true;
    Atomics.store(stop, 0, 1);
    process.off('SIGINT', onInterrupt);
  };
  process.on('SIGINT', onInterrupt);
  const task = (endTarget: EndTarget): PlanTask => ({
    scenario,
    endTarget,
    seed: options.seed,
    budget:
      options.iterations === undefined ? { seconds: options.seconds } : { iterations: options.iterations },
    weather,
    stop,
  });
  try {
    const plans = await Promise.all(
      endTargets(scenario, options.end).map(async (endTarget) => {
        const name = planNames[endTarget];
        const outcome = await planInThread(task(endTarget), (progress) =>
          line.show(progressText(name, progress, scenario.currency)),
        );
        if (outcome.status === 'infeasible')
          throw new CommandEnd(exitCodes.faults, ['No plan is possible:', ...outcome.reasons].join('\n  '));
        return { name, plan: outcome.plan };
      }),
    );
    return { plans, interrupted };
  } finally {
    line.end();
    process.off('SIGINT', onInterrupt);
  }
}

function endTargets(scenario: Scenario, end: PlanCommandOptions['end']): EndTarget[] {
  const usual: EndTarget = scenario.handPlan.length > 0 ? 'hand plan' : 'operator';
  if (end === 'both') return [usual, 'minimum'];
  return [end === 'hand-plan' ? 'hand plan' : end];
}

function handPlan(scenario: Scenario): { name: string; plan: FlightPlan } {
  return { name: 'made by hand', plan: planByHand(scenario, { endTarget: 'hand plan', weather }).plan };
}
