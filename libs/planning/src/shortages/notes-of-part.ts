import type { FlightPlan, Shortage } from '../flight-plan.js';
import type { DescribedFlights } from '../flights/describe-flights.js';
import { endTargets } from '../problem/end-targets.js';
import { planRemarks } from '../remarks/plan-remarks.js';
import { riskOfFlights } from '../risk/risk-of-flights.js';
import type { Scenario } from '../scenario.js';
import { findShortages } from './find-shortages.js';

/** What a plan says beside its flights: what it cannot keep, and remarks on what it rests on. */
export type PlanNotes = Pick<FlightPlan, 'shortages' | 'remarks'>;

/**
 * The notes of a plan of which only some lines are taken, by the flights that would then stand. A shortage that the whole
 * plan has too keeps what blocks it; the others come from the lines that are left out. `weather` as the plan was judged.
 */
export function notesOfPart(
  scenario: Scenario,
  plan: FlightPlan,
  described: DescribedFlights,
  weather: { readonly fortnights: number; readonly seed: number },
): PlanNotes {
  const blocked = new Map(plan.shortages.map(({ text, blockedBy }) => [text, blockedBy]));
  const found = findShortages(described.caches, endTargets(scenario, plan.endTarget));
  const risk = plan.risk && riskOfFlights(scenario, described.flights, described.caches, weather);
  return {
    shortages: found.map(
      (shortfall): Shortage => ({
        ...shortfall,
        blockedBy: blocked.get(shortfall.text) ?? 'the lines that are left out',
      }),
    ),
    remarks: planRemarks(scenario, described, risk),
  };
}
