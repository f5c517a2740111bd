import type { PlannedFlight } from '../flight-plan.js';
import { flightLegs } from '../flights/flight-legs.js';
import { sketchFlight } from '../flights/flight-sketch.js';
import { flightLoads } from '../problem/flight-loads.js';
import { isWithin } from '../problem/standing-flights.js';
import { territoryOf } from '../problem/territory.js';
import type { Scenario } from '../scenario.js';

/**
 * What each leg carries and what binds, by the facts of today, of some of the scenario's own flights, by id. A flight that
 * is not among them, or outside its days, is left out. Weights in lb.
 */
export function legsToday(
  scenario: Scenario,
  ids: ReadonlySet<string>,
): ReadonlyMap<string, PlannedFlight['legs']> {
  const asked = scenario.flights.filter(({ id, date }) => ids.has(id) && isWithin(scenario, date));
  if (asked.length === 0) return new Map();
  const loads = flightLoads(scenario, territoryOf(scenario));
  return new Map(asked.map((flight) => [flight.id, flightLegs(sketchFlight(scenario, loads, flight))]));
}
