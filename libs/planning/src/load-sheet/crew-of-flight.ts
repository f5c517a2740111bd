import { whyNotFit } from '../problem/crew-fit.js';
import { placesOf } from '../problem/standing-flights.js';
import { territoryOf } from '../problem/territory.js';
import type { Scenario, StandingFlight } from '../scenario.js';
import type { WhoIsFit } from '../week/flight-card.js';

/** Every pilot of the territory with what keeps them off the flight on its day, hours apart. */
export function crewOfFlight(scenario: Scenario, flight: StandingFlight): readonly WhoIsFit[] {
  const { pilots, policy, aircraft } = scenario;
  const { place } = territoryOf(scenario);
  const { type } = aircraft.find(({ tail }) => tail === flight.aircraft)!;
  return pilots.map((pilot) => ({
    id: pilot.id,
    whyNot: whyNotFit(pilot, type, placesOf(flight).map(place), flight.date, policy.crew),
  }));
}
