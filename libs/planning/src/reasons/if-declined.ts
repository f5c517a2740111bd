import type { FlightReason } from '../flight-plan.js';
import { describeFlights } from '../flights/describe-flights.js';
import type { Scenario } from '../scenario.js';

/** What follows if a flight is declined, in words, and the cache and day that it protects. */
type IfDeclined = Pick<FlightReason, 'ifDeclined' | 'protects'>;

/** Of a flight that is no part of the days ahead. */
export const nothingIfDeclined: IfDeclined = {
  ifDeclined: 'It is no part of the days ahead: nothing changes.',
  protects: null,
};

/** By the id of a flight that stands in the scenario: worked out in one piece for all of them, each beside all others. */
export const ifDeclinedByFlight = (scenario: Scenario): ((id: string) => IfDeclined) => {
  const { flights } = describeFlights(scenario, scenario.flights, 'operator');
  const reasons = new Map(
    flights.map(({ id, reason: { ifDeclined, protects } }) => [id, { ifDeclined, protects }]),
  );
  return (id) => reasons.get(id) ?? nothingIfDeclined;
};
