import type { Plan } from '@drumline/routing';
import { litres, minutesOfDay } from '@drumline/units';
import { sketchFlight } from '../flights/flight-sketch.js';
import { isFlown } from '../flights/flight-state.js';
import { flightTimes } from '../flights/flight-times.js';
import { plannedTrips } from '../flights/planned-trips.js';
import { projectScenario } from '../flights/project.js';
import { flightLoads } from '../problem/flight-loads.js';
import type { BuiltProblem } from '../problem/problem-map.js';
import { territoryOf } from '../problem/territory.js';
import { chanceOfCritical } from '../risk/chance-of-critical.js';

/** How likely a plan is to let a cache fall below critical, 0 to 1, with its flights at the hours that they would fly. */
export function fragilityOf(built: BuiltProblem): (plan: Plan) => number {
  const { scenario } = built;
  const loads = flightLoads(scenario, territoryOf(scenario));
  const fill = scenario.policy.drum.fillLitres;
  return (plan) => {
    const flights = plannedTrips(built, plan);
    const caches = projectScenario(scenario, flights);
    const sketches = flights.map((flight) => sketchFlight(scenario, loads, flight));
    const times = flightTimes(scenario, sketches, caches);
    const landings = sketches
      .filter(({ flight }) => !isFlown(flight.state))
      .flatMap(({ flight, day }) => {
        const isMorning = minutesOfDay(times.get(flight.id)!) < noon;
        const half = isMorning ? ('morning' as const) : ('afternoon' as const);
        return flight.stops.map(({ place, drums }) => ({
          place,
          day,
          half,
          drums,
          litres: litres(drums * fill),
        }));
      });
    return chanceOfCritical(caches, landings, scenario.weather);
  };
}

const noon = minutesOfDay('12:00');
