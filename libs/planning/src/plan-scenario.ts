import { costOf, type Plan, type PlanCost, type Proof } from '@drumline/routing';
import { checkPlan } from './check/check-plan.js';
import { faultWords, withDecisions } from './check/decisions.js';
import { sortFaults } from './check/sort-faults.js';
import type { EndTarget, Fault, FlightPlan, Shortage } from './flight-plan.js';
import type { DescribedFlights } from './flights/describe-flights.js';
import { fitSchedule } from './flights/fit-schedule.js';
import { planDocument } from './flights/plan-document.js';
import { readPlan } from './flights/read-plan.js';
import { buildProblem } from './problem/build-problem.js';
import type { BuiltProblem } from './problem/problem-map.js';
import { unmannedDays } from './problem/unmanned-days.js';
import type { Scenario } from './scenario.js';
import { blockedWords } from './shortages/blocked-words.js';
import { findBlockers, type Solver } from './shortages/find-blockers.js';
import { findShortages } from './shortages/find-shortages.js';
import { noMoreFragileThanByHand } from './steady/no-more-fragile.js';
import { steadyPlan } from './steady/steady-plan.js';
import { withoutEmptyStops } from './steady/without-empty-stops.js';

export interface PlanOptions {
  readonly endTarget: EndTarget;
  /** Fortnights of weather to judge the plan by; null: none. */
  readonly weather: { readonly fortnights: number; readonly seed: number } | null;
  /**
   * Says when the time is up for what follows the solver: making the plan better and less fragile, and asking which
   * limit blocks each shortage. Never: the same plan for the same answer of the solver.
   */
  readonly isOver: (stage: AfterStage) => boolean;
}

/** What is done with a plan once it is found. */
export type AfterStage = 'bettering' | 'asking what blocks';

export type PlanOutcome =
  | { readonly status: 'solved'; readonly plan: FlightPlan }
  | { readonly status: 'infeasible'; readonly reasons: readonly string[] };

/**
 * The flights of a scenario: the problem is built and solved, the plan made less fragile, freed of landings without a purpose, read as flights and checked from the scenario by code
 * that shares nothing with the solver. Infeasible, with the reasons, where no plan keeps the limits. Throws where the
 * plan breaks a rule: that is a bug, never an outcome. Rules that frozen flights break by
 * themselves need a decision.
 */
export async function planScenario(
  scenario: Scenario,
  options: PlanOptions,
  solver: Solver,
): Promise<PlanOutcome> {
  const missing = whatIsMissing(scenario, options);
  if (missing !== null) return { status: 'infeasible', reasons: [missing] };
  const built = buildProblem(scenario, options.endTarget);
  const unmanned = unmannedDays(built);
  if (unmanned.length > 0) return { status: 'infeasible', reasons: unmanned };
  const outcome = await solver(built.problem, 'full');
  if (outcome.status === 'infeasible') return outcome;

  const isOver = () => options.isOver('bettering');
  const found = await searchedAgain(built, outcome.plan, solver, isOver);
  const steadied = steadyPlan(built, found, isOver);
  const sturdy = await noMoreFragileThanByHand(built, steadied, solver, isOver);
  const steady = fitSchedule(built, withoutEmptyStops(built.problem, sturdy));
  const described = readPlan(built, steady);
  const shortages = await explainedShortages(built, steady, described, options, solver);
  const { endTarget, weather } = options;
  const tiers = costOf(built.problem, steady);
  const proof = proofOf(outcome.proof, tiers);
  const plan = planDocument(scenario, described, { endTarget, tiers, proof, shortages, weather });
  const { ofThePlan, forDecision } = sortFaults(scenario, plan.flights, checkPlan(scenario, plan));
  refuseFaults(ofThePlan);
  return { status: 'solved', plan: withDecisions(plan, forDecision) };
}

function whatIsMissing({ handPlan }: Scenario, { endTarget }: PlanOptions): string | null {
  return endTarget === 'hand plan' && handPlan.length === 0
    ? 'The scenario holds no plan made by hand to take the end targets from: choose "operator" or "minimum", or add one.'
    : null;
}

/** Where a plan is short, quick searches go on from it while they help: a shortage must not be for want of looking. */
async function searchedAgain(
  { problem }: Pick<BuiltProblem, 'problem'>,
  plan: Plan,
  solver: Solver,
  isOver: () => boolean,
): Promise<Plan> {
  const { unmet, belowCritical, belowMinimum, total } = costOf(problem, plan);
  if (unmet + belowCritical + belowMinimum === 0 || isOver()) return plan;
  const outcome = await solver(problem, 'quick', plan);
  const isBetter = outcome.status === 'solved' && costOf(problem, outcome.plan).total < total - leastGain;
  return isBetter ? searchedAgain({ problem }, outcome.plan, solver, isOver) : plan;
}

/** Cents; a smaller gain is rounding. */
const leastGain = 1;

async function explainedShortages(
  built: BuiltProblem,
  plan: Plan,
  { caches }: DescribedFlights,
  { isOver }: PlanOptions,
  solver: Solver,
): Promise<readonly Shortage[]> {
  const targets = caches.map(({ place }) => targetOf(built, place));
  const shortfalls = findShortages(caches, targets);
  const blocked = await findBlockers(built, plan, caches, shortfalls, solver, () =>
    isOver('asking what blocks'),
  );
  return blocked.map(({ by, ...shortfall }) => ({
    ...shortfall,
    blockedBy: blockedWords(built, shortfall, by),
  }));
}

function targetOf({ problem, map }: BuiltProblem, place: string): number {
  return problem.stores[map.storeOf.get(place)!]!.endTarget;
}

/**
 * The proof for a plan that costs the same money; the cushion may differ by cents. A bound below zero, where the solver
 * had no time for a better one, says nothing.
 */
function proofOf(proof: Proof, { total }: PlanCost): Proof {
  const bound = proof.bound !== null && proof.bound > 0 ? proof.bound : null;
  const gap = bound === null ? null : Math.max(0, (total - bound) / total);
  return { ...proof, objective: total, bound, gap };
}

function refuseFaults([fault]: readonly Fault[]): void {
  if (fault) throw new Error(`The plan breaks a rule: ${faultWords(fault)}`);
}
