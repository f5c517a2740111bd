import type { Pattern } from '../bound/relaxation.js';
import { dutyOfBooked } from '../crews/book-crews.js';
import { CrewHours } from '../crews/crew-hours.js';
import type { Plan, Trip } from '../plan.js';
import type { Problem } from '../problem.js';
import { assignVehicles, conditionsOf } from './assign-vehicles.js';

/**
 * The plan that travels the patterns, vehicles and crews assigned; null where the hours added up were enough but no
 * assignment to single vehicles or people was found.
 */
export function planOfPatterns(problem: Problem, patterns: readonly Pattern[]): Plan | null {
  const isTrip = ({ route }: Pattern) => route < problem.routes.length;
  const travelled = patterns.filter((pattern) => isTrip(pattern) && pattern.drops.some((drop) => drop > 0));
  const vehicles = assignVehicles(problem, travelled);
  if (!vehicles) return null;
  const trips = travelled.map((pattern, at) => ({ ...pattern, vehicle: vehicles[at], crew: -1 }));
  const bookedDrops = problem.booked.map(({ stops }, at) => {
    const loaded = patterns.find(({ route }) => route === problem.routes.length + at);
    return loaded?.drops ?? stops.map(() => 0);
  });
  return withCrews(problem, trips, bookedDrops);
}

/** Patterns of a plan, booked routes included where something is added to them. */
export function patternsOfPlan(problem: Problem, plan: Plan): Pattern[] {
  return [
    ...plan.trips.map(({ route, day, drops }) => ({ route, day, drops })),
    ...problem.booked.map(({ day }, at) => ({
      route: problem.routes.length + at,
      day,
      drops: plan.bookedDrops[at],
    })),
  ].filter(({ drops }) => drops.some((drop) => drop > 0));
}

function withCrews(problem: Problem, trips: readonly Trip[], bookedDrops: Plan['bookedDrops']): Plan | null {
  const bookedCrews = problem.booked.map(() => -1);
  if (problem.crews.length === 0) return { trips, bookedDrops, bookedCrews };
  const hours = new CrewHours(problem);
  const manned: Trip[] = [];
  for (let day = 0; day < problem.days; day++) {
    const today = trips.filter((trip) => trip.day === day);
    const needy = today.filter(({ route }) => problem.routes[route].crewGroup >= 0);
    const booked = [...problem.booked.keys()].filter(
      (at) => problem.booked[at].day === day && problem.booked[at].crewGroup >= 0,
    );
    const duties = [
      ...booked.map((at) => dutyOfBooked(problem.booked[at])),
      ...needy.map(({ route }) => ({
        ...conditionsOf(problem, route, day),
        day,
        group: problem.routes[route].crewGroup,
      })),
    ];
    const crews = hours.match(duties);
    if (!crews) return null;
    crews.forEach((crew, at) => {
      hours.work(crew, duties[at], 1);
    });
    booked.forEach((at, index) => {
      bookedCrews[at] = crews[index];
    });
    manned.push(
      ...today.filter((trip) => !needy.includes(trip)),
      ...needy.map((trip, index) => ({ ...trip, crew: crews[booked.length + index] })),
    );
  }
  return { trips: manned, bookedDrops, bookedCrews };
}
