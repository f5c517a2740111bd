import { checkPlan as checkRoutes, type Plan, type Proof } from '@drumline/routing';
import { checkPlan } from './check/check-plan.js';
import { withDecisions } from './check/decisions.js';
import { sortFaults } from './check/sort-faults.js';
import type { Fault, FlightPlan } from './flight-plan.js';
import { describeFlights } from './flights/describe-flights.js';
import { planDocument } from './flights/plan-document.js';
import { plannedTrips } from './flights/planned-trips.js';
import type { PlanOptions } from './plan-scenario.js';
import { buildProblem } from './problem/build-problem.js';
import { flightsToPlan, planFromFlights } from './problem/plan-from-flights.js';
import type { BuiltProblem } from './problem/problem-map.js';
import type { Scenario, StandingFlight } from './scenario.js';
import { findShortages } from './shortages/find-shortages.js';

/** A plan made by hand, as a document, and the rules that it breaks. */
export interface PlanByHand {
  readonly plan: FlightPlan;
  readonly faults: readonly Fault[];
}

/**
 * The scenario's hand plan read, costed, checked and simulated by the same rules as a solved one. Flights that name no
 * pilot get one who is fit and has the hours, where there is one. Why its shortages were not avoided is not looked for.
 */
export function planByHand(
  scenario: Scenario,
  { endTarget, weather }: Pick<PlanOptions, 'endTarget' | 'weather'>,
): PlanByHand {
  const built = buildProblem(scenario, endTarget);
  const plan = planFromFlights(built, scenario.handPlan);
  const described = describeFlights(scenario, namedFlights(built, plan), endTarget);
  const { cost: tiers } = checkRoutes(built.problem, plan);
  const targets = scenario.caches.map(
    ({ place }) => built.problem.stores[built.map.storeOf.get(place)!]!.endTarget,
  );
  const shortages = findShortages(described.caches, targets).map((shortfall) => ({
    ...shortfall,
    blockedBy: 'not looked for, the plan was made by hand.',
  }));
  const proof = proofOf(tiers.total);
  const document = planDocument(scenario, described, { endTarget, tiers, proof, shortages, weather });
  const faults = checkPlan(scenario, document);
  return {
    plan: withDecisions(document, sortFaults(scenario, document.flights, faults).forDecision),
    faults,
  };
}

/** The flights with their own ids and the pilots found for them, and those that fly anyway. */
function namedFlights(built: BuiltProblem, plan: Plan): readonly StandingFlight[] {
  const flights = flightsToPlan(built, built.scenario.handPlan).map((flight, i) => {
    const pilot = built.map.crews[plan.trips[i]!.crew]?.id;
    return pilot === undefined ? flight : { ...flight, pilot };
  });
  return [...plannedTrips(built, { ...plan, trips: [] }), ...flights];
}

function proofOf(objective: number): Proof {
  return { objective, bound: null, gap: null, seconds: 0, solver: 'by hand', seed: 0, iterations: 0 };
}
