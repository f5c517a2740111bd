import { costOf, type Plan, type Problem } from '@drumline/routing';
import { dayIndex, type IsoDate, litres } from '@drumline/units';
import { projectScenario } from '../flights/project.js';
import type { BuiltProblem } from '../problem/problem-map.js';
import { chanceOfCritical } from '../risk/chance-of-critical.js';
import type { Scenario } from '../scenario.js';
import type { Solver } from '../shortages/find-blockers.js';
import { fragilityOf } from './fragility.js';
import { steadyPlan } from './steady-plan.js';

/**
 * A plan that is judged against the plan made by hand must not be likelier to let a cache fall below critical than that
 * one: then it would be cheap because it is fragile. Where it is, a plan of flights to one strip each is made: a cache
 * that is filled by fewer flights waits for fewer strips to open. It is taken where it is less fragile and no shorter.
 * When it `isOver` the plan stays: whoever stops the search wants the plan that was shown, not one that nobody looked for.
 */
export async function noMoreFragileThanByHand(
  built: BuiltProblem,
  plan: Plan,
  solver: Solver,
  isOver: () => boolean,
): Promise<Plan> {
  if (built.endTarget !== 'hand plan' || isOver()) return plan;
  const fragility = fragilityOf(built);
  if (fragility(plan) <= fragilityByHand(built.scenario)) return plan;
  const simple = await flightsToOneStrip(built.problem, solver);
  if (simple === null) return plan;
  const steady = steadyPlan(built, simple, isOver);
  return shortageOf(built.problem, steady) <= shortageOf(built.problem, plan) &&
    fragility(steady) < fragility(plan)
    ? steady
    : plan;
}

/** The hand plan's chance, every flight in the morning. */
function fragilityByHand(scenario: Scenario): number {
  const { fillLitres } = scenario.policy.drum;
  const landings = scenario.handPlan.flatMap(({ date, stops }) =>
    stops.map(({ place, drums }) => ({
      place,
      day: dayOf(scenario, date),
      half: 'morning' as const,
      drums,
      litres: litres(drums * fillLitres),
    })),
  );
  return chanceOfCritical(projectScenario(scenario, scenario.handPlan), landings, scenario.weather);
}

async function flightsToOneStrip(problem: Problem, solver: Solver): Promise<Plan | null> {
  const kept = [...problem.routes.keys()].filter((route) => problem.routes[route]!.stops.length === 1);
  const outcome = await solver({ ...problem, routes: kept.map((route) => problem.routes[route]!) }, 'quick');
  if (outcome.status !== 'solved') return null;
  return {
    ...outcome.plan,
    trips: outcome.plan.trips.map((trip) => ({ ...trip, route: kept[trip.route]! })),
  };
}

function shortageOf(problem: Problem, plan: Plan): number {
  const { unmet, belowCritical, belowMinimum, endShort } = costOf(problem, plan);
  return unmet + belowCritical + belowMinimum + endShort;
}

/** Day of the plan, from 1. */
const dayOf = ({ firstDay }: Scenario, date: IsoDate): number => dayIndex(firstDay, date) + 1;
