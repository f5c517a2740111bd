import { asStandingFlight, type FlightPlan, type Scenario, type StandingFlight } from '@drumline/planning';
import { isIdea, lastOfferedDay } from './accepted-flights.js';

/**
 * Flights that a plan had in mind for the days after those it offered, as far as the scenario still knows what they name.
 * Without them a re-plan would seem to add the whole second week.
 */
export const ideasOf = (plan: FlightPlan | null, scenario: Scenario): readonly StandingFlight[] => {
  if (plan === null) return [];
  const tails = new Set(scenario.aircraft.map(({ tail }) => tail));
  const codes = new Set(scenario.places.map(({ code }) => code));
  const crews = new Set(scenario.pilots.map(({ id }) => id));
  const numbers = new Set(scenario.flights.map(({ id }) => id));
  const last = lastOfferedDay(plan);
  return plan.flights
    .filter((flight) => isIdea(flight, last))
    .map(asStandingFlight)
    .filter(
      ({ id, aircraft, from, to, stops, pilot }) =>
        !numbers.has(id) &&
        tails.has(aircraft) &&
        [from, to, ...stops.map(({ place }) => place)].every((code) => codes.has(code)) &&
        (pilot === undefined || crews.has(pilot)),
    );
};
