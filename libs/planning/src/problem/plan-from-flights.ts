import { CrewHours, type Plan, type Problem, type Trip } from '@drumline/routing';
import type { StandingFlight } from '../scenario.js';
import { routeKey } from './build-problem.js';
import { typeOf } from './fixed-flights.js';
import type { BuiltProblem } from './problem-map.js';
import { isWithin, placesOf } from './standing-flights.js';

/**
 * Flights made by hand as a plan of the routing problem, so that they are costed, checked and simulated by the same
 * rules as a solved one. Frozen flights and flights outside the horizon are left out: they are constants, or no part
 * of it. Each flight keeps the pilot it names; the others get pilots by matching, day by day; -1 where that fails.
 * Throws for a flight over places that no standing or hand-made flight of the scenario goes.
 */
export function planFromFlights(built: BuiltProblem, flights: readonly StandingFlight[]): Plan {
  const { scenario, problem, map } = built;
  const routeOf = new Map(problem.routes.map((route, index) => [routeKey(route), index]));
  const trips = flightsToPlan(built, flights).map((flight): Trip => {
    const stops = placesOf(flight).map((place) => map.storeOf.get(place)!);
    const key = routeKey({
      kind: typeOf(scenario, flight.aircraft),
      source: stops[0]!,
      stops: stops.slice(1, -1),
      end: stops.at(-1)!,
    });
    const route = routeOf.get(key);
    if (route === undefined)
      throw new Error(
        `Flight ${flight.id} over ${placesOf(flight).join('-')} is no route of the plan: make it two flights if it lands twice at a place, else add it to the scenario's flights.`,
      );
    return {
      vehicle: map.vehicles.findIndex(({ tail }) => tail === flight.aircraft),
      day: map.dates.indexOf(flight.date),
      route,
      drops: flight.stops.map(({ drums }) => drums),
      crew: map.crews.findIndex(({ id }) => id === flight.pilot),
    };
  });
  return {
    ...withCrews(problem, trips),
    bookedDrops: map.booked.map((_, index) => bookedDrops(built, index, flights)),
  };
}

/** Drums at each stop of a booked route: those of the flight with its id; a stop is the next landing there. */
function bookedDrops(
  { problem, map }: BuiltProblem,
  index: number,
  flights: readonly StandingFlight[],
): readonly number[] {
  const { kind, flight } = map.booked[index]!;
  const left = kind === 'booked' ? [...(flights.find(({ id }) => id === flight.id)?.stops ?? [])] : [];
  return problem.booked[index]!.stops.map((store) =>
    left[0]?.place === map.stores[store]!.place ? left.shift()!.drums : 0,
  );
}

/** The flights that a plan decides on: of the horizon, neither frozen nor booked; the trips are in their order. */
export function flightsToPlan(
  { scenario, map }: BuiltProblem,
  flights: readonly StandingFlight[],
): readonly StandingFlight[] {
  const fixed = new Set(map.booked.map(({ flight }) => flight.id));
  return flights.filter(({ id, date }) => !fixed.has(id) && isWithin(scenario, date));
}

/** Pilots for booked routes and for the trips that name none. */
function withCrews(problem: Problem, trips: readonly Trip[]): Pick<Plan, 'trips' | 'bookedCrews'> {
  const crewed = [...trips];
  const bookedCrews = problem.booked.map(() => -1);
  const hours = new CrewHours(problem);
  for (let day = 0; day < problem.days; day++) {
    for (const trip of trips)
      if (trip.day === day && trip.crew >= 0) hours.work(trip.crew, dutyOf(problem, trip), 1);
    const open = [...trips.keys()].filter((t) => trips[t]!.day === day && needsCrew(problem, trips[t]!));
    const booked = [...bookedCrews.keys()].filter(
      (b) => problem.booked[b]!.day === day && problem.booked[b]!.crewGroup >= 0,
    );
    const duties = [
      ...booked.map((b) => ({ ...problem.booked[b]!, group: problem.booked[b]!.crewGroup })),
      ...open.map((t) => dutyOf(problem, trips[t]!)),
    ];
    const crews = hours.match(duties) ?? duties.map(() => -1);
    crews.forEach((crew, i) => {
      if (crew >= 0) hours.work(crew, duties[i]!, 1);
      if (i < booked.length) bookedCrews[booked[i]!] = crew;
      else crewed[open[i - booked.length]!] = { ...trips[open[i - booked.length]!]!, crew };
    });
  }
  return { trips: crewed, bookedCrews };
}

function needsCrew(problem: Problem, { route, crew }: Trip): boolean {
  return crew < 0 && problem.routes[route]!.crewGroup >= 0;
}

/** A trip on a day without conditions takes no hours: the check names that fault. */
function dutyOf(problem: Problem, { route, day }: Trip) {
  const { conditions, conditionByDay, crewGroup } = problem.routes[route]!;
  const { blockHours, dutyHours } = conditions[conditionByDay[day]!] ?? { blockHours: 0, dutyHours: 0 };
  return { day, group: crewGroup, blockHours, dutyHours };
}
