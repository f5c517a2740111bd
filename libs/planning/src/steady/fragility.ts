import { deliveriesOf, type Plan, storeCourse } from '@drumline/routing';
import type { CacheProjection } from '@drumline/stock';
import { litres, minutesOfDay } from '@drumline/units';
import { sketchFlight } from '../flights/flight-sketch.js';
import { isFlown } from '../flights/flight-state.js';
import { flightTimes } from '../flights/flight-times.js';
import { plannedTrips } from '../flights/planned-trips.js';
import { projectScenario } from '../flights/project.js';
import { flightLoads } from '../problem/flight-loads.js';
import type { BuiltProblem } from '../problem/problem-map.js';
import { usableDrums } from '../problem/standing-flights.js';
import { territoryOf } from '../problem/territory.js';
import { chanceOfCritical } from '../risk/chance-of-critical.js';

/** How likely a plan is to let a cache fall below critical, 0 to 1, with its flights at the hours that they would fly. */
export function fragilityOf(built: BuiltProblem): (plan: Plan) => number {
  const { scenario } = built;
  const loads = flightLoads(scenario, territoryOf(scenario));
  const fill = scenario.policy.drum.fillLitres;
  const frozen = built.map.frozen.map(({ flight }) => flight);
  const fixed = projectScenario(scenario, frozen);
  return (plan) => {
    const caches = cachesWith(built, fixed, plan);
    const sketches = plannedTrips(built, plan).map((flight) => sketchFlight(scenario, loads, flight));
    const times = flightTimes(scenario, sketches, caches);
    const landings = sketches
      .filter(({ flight }) => !isFlown(flight.state))
      .flatMap(({ flight, day }) => {
        const isMorning = minutesOfDay(times.get(flight.id)!) < noon;
        const half = isMorning ? ('morning' as const) : ('afternoon' as const);
        return flight.stops.map((stop) => ({
          place: stop.place,
          day,
          half,
          drums: stop.drums,
          litres: litres(usableDrums(stop) * fill),
        }));
      });
    return chanceOfCritical(caches, landings, scenario.weather);
  };
}

const noon = minutesOfDay('12:00');

/** Levels with the plan's drums, from the problem: working them out drum by drum for every plan would take ten times as long. */
function cachesWith(
  { problem, map }: BuiltProblem,
  fixed: readonly CacheProjection[],
  plan: Plan,
): readonly CacheProjection[] {
  const deliveries = deliveriesOf(problem, plan);
  return fixed.map((cache) => {
    const index = map.storeOf.get(cache.place)!;
    const store = problem.stores[index]!;
    const { levels, unmet } = storeCourse(store, deliveries[index]!);
    let missing = 0;
    const usable = levels.map((level, day) => {
      missing += unmet[day]!;
      return litres(level - missing);
    });
    const landed = deliveries[index]!.map((amount, day) => litres(amount + cache.landed[day + 1]!));
    return { ...cache, usable: [cache.usable[0]!, ...usable], landed: [litres(0), ...landed] };
  });
}
