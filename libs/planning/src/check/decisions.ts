import type { Decision, Fault, FlightPlan, PlannedFlight } from '../flight-plan.js';
import { drumWords } from '../wording.js';

/** The plan with a mark on every standing flight that one of these faults concerns, and the list of them by day. */
export function withDecisions(plan: FlightPlan, faults: readonly Fault[]): FlightPlan {
  return {
    ...plan,
    flights: plan.flights.map((flight) => {
      const own = faults.filter(({ flights }) => flights.includes(flight.id));
      return own.length === 0 ? flight : { ...flight, needsDecision: own.map(faultWords).join(' ') };
    }),
    needsDecision: plan.flights.flatMap((flight) =>
      faults
        .filter(({ flights }) => flights.includes(flight.id))
        .map((fault): Decision => ({ flight: flight.id, fault, consequence: consequenceOf(flight) })),
    ),
  };
}

/** "QUER, Mon 11 Oct: 4 drums would ... Take 4 drums less ..." */
export const faultWords = ({ where, what, mend }: Fault): string => `${where}: ${what} ${mend}`;

function consequenceOf({ drums, reason }: PlannedFlight): string {
  return drums === 0
    ? 'It carries no drums.'
    : `The stock below counts on its ${drumWords(drums)}. ${reason.ifDeclined}`;
}
