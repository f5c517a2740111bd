import type { PlanCost, Proof } from '@drumline/routing';
import type { EndTarget, FlightPlan, Shortage } from '../flight-plan.js';
import { planRemarks } from '../remarks/plan-remarks.js';
import { riskOfFlights } from '../risk/risk-of-flights.js';
import type { Scenario } from '../scenario.js';
import type { DescribedFlights } from './describe-flights.js';
import { moneyGap } from './money-gap.js';

/** What a plan document tells beside its flights. */
export interface PlanFindings {
  readonly endTarget: EndTarget;
  readonly tiers: PlanCost;
  readonly proof: Proof;
  readonly shortages: readonly Shortage[];
  /** Null: the weather is not simulated. */
  readonly weather: { readonly fortnights: number; readonly seed: number } | null;
}

/** The plan document: flights, stock, bases and money, with the proof, the shortages, the risk and the remarks. */
export function planDocument(
  scenario: Scenario,
  described: DescribedFlights,
  findings: PlanFindings,
): FlightPlan {
  const { flights, caches, bases } = described;
  const { weather, ...told } = findings;
  const risk = weather && riskOfFlights(scenario, flights, caches, weather);
  return {
    title: scenario.title,
    firstDay: scenario.firstDay,
    days: scenario.days,
    offeredDays: scenario.offeredDays,
    currency: scenario.currency,
    ...told,
    needsDecision: [],
    moneyGap: moneyGap(findings.tiers, findings.proof, described.cost.total),
    flights,
    caches,
    bases,
    cost: described.cost,
    remarks: planRemarks(scenario, described, risk),
    risk,
  };
}
