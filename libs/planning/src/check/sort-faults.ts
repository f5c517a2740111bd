import type { Fault } from '../flight-plan.js';
import { drumsOf } from '../problem/standing-flights.js';
import type { Scenario, StandingFlight } from '../scenario.js';

/** Faults of a plan, and faults that were there before it: of flights that no re-plan may touch. */
export interface SortedFaults {
  readonly ofThePlan: readonly Fault[];
  /** Only frozen flights, and booked ones without drums, are concerned: somebody must decide on them. */
  readonly forDecision: readonly Fault[];
}

/** Sorts faults of these flights by whether the plan could have avoided them. */
export function sortFaults(
  scenario: Scenario,
  flights: readonly Pick<StandingFlight, 'id' | 'stops'>[],
  faults: readonly Fault[],
): SortedFaults {
  const loaded = new Set(flights.filter((flight) => drumsOf(flight) > 0).map(({ id }) => id));
  const fixed = new Set([
    ...scenario.flights.filter(({ state }) => state !== 'offered').map(({ id }) => id),
    ...scenario.bookedFlights.filter(({ id }) => !loaded.has(id)).map(({ id }) => id),
  ]);
  const isFixed = ({ flights }: Fault): boolean => flights.length > 0 && flights.every((id) => fixed.has(id));
  return {
    ofThePlan: faults.filter((fault) => !isFixed(fault)),
    forDecision: faults.filter(isFixed),
  };
}
