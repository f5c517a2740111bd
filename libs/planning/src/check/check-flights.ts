import type { Fault } from '../flight-plan.js';
import { isWithin } from '../problem/standing-flights.js';
import type { Scenario, StandingFlight } from '../scenario.js';
import { checkBalance } from './check-balance.js';
import { checkBases } from './check-bases.js';
import { checkCaches } from './check-caches.js';
import { checkCrews } from './check-crews.js';
import { checkPlaces } from './check-places.js';
import { checkTimes } from './check-times.js';
import { checkWeights } from './check-weights.js';
import { type Survey, survey } from './survey.js';

/** One family of rules: what it finds wrong with the flights. */
type Check = (survey: Survey) => readonly Fault[];

const checks: readonly Check[] = [
  checkPlaces,
  checkWeights,
  checkBalance,
  checkCrews,
  checkTimes,
  checkCaches,
  checkBases,
];

/**
 * Every rule that these flights break, worked out from the scenario with code of its own; empty: none. A flight with
 * the id of a booked flight stands for the drums put on it. Flights under way or done count but are not judged.
 * Levels below minimum are no fault of a flight. Throws where a flight names what the scenario does not have.
 */
export function checkFlights(scenario: Scenario, flights: readonly StandingFlight[]): readonly Fault[] {
  const surveyed = survey(scenario, withBookedFlights(scenario, flights));
  return checks.flatMap((check) => check(surveyed));
}

/** Booked flights hold aircraft and burn fuel whether or not they carry drums. */
function withBookedFlights(
  scenario: Scenario,
  flights: readonly StandingFlight[],
): readonly StandingFlight[] {
  const named = new Set(flights.map((flight) => flight.id));
  const others = scenario.bookedFlights.filter(({ id, date }) => !named.has(id) && isWithin(scenario, date));
  return [
    ...flights,
    ...others.map((booked): StandingFlight => {
      const { id, date, aircraft, legs, departs } = booked;
      const standing = {
        id,
        state: 'approved' as const,
        date,
        aircraft,
        from: legs[0]!.from,
        stops: [],
        to: legs.at(-1)!.to,
      };
      return departs === undefined ? standing : { ...standing, departs };
    }),
  ];
}
