import type { Fault } from '../flight-plan.js';
import type { Scenario } from '../scenario.js';
import { checkFlights } from './check-flights.js';

/**
 * What forbids booked flights that carry no drums as they are booked, by the scenario's facts: by the number of the booking, the
 * first of its faults. What concerns a flight of the plan as well is that flight's, which can be moved. `checked`: the faults of
 * the scenario's flights, where the caller has them already. Throws as `checkFlights`.
 */
export function bookedFaults(
  scenario: Scenario,
  checked: readonly Fault[] = checkFlights(scenario, scenario.flights),
): ReadonlyMap<string, Fault> {
  const standing = new Set(scenario.flights.map(({ id }) => id));
  const faults = checked.filter(
    ({ flights }) => flights.length > 0 && !flights.some((id) => standing.has(id)),
  );
  return new Map(faults.toReversed().flatMap((fault) => fault.flights.map((id) => [id, fault] as const)));
}
