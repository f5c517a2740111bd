import { checkPlan, costOf, type Plan, type Problem, type Trip } from '@drumline/routing';
import { flightLoads } from '../problem/flight-loads.js';
import type { BuiltProblem } from '../problem/problem-map.js';
import { territoryOf } from '../problem/territory.js';
import { type FlightSketch, sketchFlight } from './flight-sketch.js';
import { type Clash, flightClashes } from './flight-times.js';
import { fixedFlights, tripFlights } from './planned-trips.js';
import { projectScenario } from './project.js';

/**
 * A plan whose every day has a schedule. The routing problem adds up hours; it does not see that a booked flight at its
 * time cuts the day in two, that pilot and aircraft are free at different hours, or that a strip is dark before the
 * base. Of a group of flights that do not fit one is put on another day, aircraft or pilot, whichever costs least, or
 * is left out where that is cheaper or nothing else fits. Groups of frozen and booked flights alone stay as they are.
 */
export function fitSchedule(built: BuiltProblem, plan: Plan): Plan {
  const clashes = clashesOf(built);
  let fitted = plan;
  for (let clash = clashes(fitted)[0]; clash; clash = clashes(fitted)[0]) {
    fitted = eased(built, fitted, clash, (candidate) => clashes(candidate).length);
  }
  return fitted;
}

/** Clashes that a trip takes part in; flights are named by the number of their trip. */
interface TripClash extends Clash {
  readonly trips: readonly number[];
}

function clashesOf(built: BuiltProblem): (plan: Plan) => readonly TripClash[] {
  const { scenario } = built;
  const loads = flightLoads(scenario, territoryOf(scenario));
  return (plan) => {
    const trips = tripFlights(built, plan).map((flight, trip) => ({ ...flight, id: `trip ${trip}` }));
    const numberOf = new Map(trips.map(({ id }, trip) => [id, trip]));
    const flights = [...fixedFlights(built, plan), ...trips];
    const sketches = flights.map((flight): FlightSketch => sketchFlight(scenario, loads, flight));
    return flightClashes(scenario, sketches, projectScenario(scenario, flights))
      .map((clash) => ({ ...clash, trips: clash.flights.flatMap((id) => numberOf.get(id) ?? []) }))
      .filter(({ trips }) => trips.length > 0);
  };
}

/** Moves looked at before the cheapest of them is taken: near days first, since far ones cost more. */
const movesTried = 60;

function eased(built: BuiltProblem, plan: Plan, clash: TripClash, clashCount: (plan: Plan) => number): Plan {
  const { problem } = built;
  const before = clashCount(plan);
  const moves = clash.trips
    .flatMap((trip) => movesOf(problem, plan.trips[trip]!).map((moved) => ({ trip, moved })))
    .sort((one, other) => distance(plan, one) - distance(plan, other));
  const moved: Plan[] = [];
  for (const { trip, moved: to } of moves) {
    if (moved.length >= movesTried) break;
    const candidate = { ...plan, trips: plan.trips.with(trip, to) };
    if (checkPlan(problem, candidate).faults.length === 0) moved.push(candidate);
  }
  const dropped = clash.trips.map((trip) => ({ ...plan, trips: plan.trips.toSpliced(trip, 1) }));
  const cheapestFirst = [...moved, ...dropped]
    .map((candidate) => ({ candidate, cost: costOf(problem, candidate).total }))
    .sort((one, other) => one.cost - other.cost);
  return (cheapestFirst.find(({ candidate }) => clashCount(candidate) < before) ?? { candidate: dropped[0]! })
    .candidate;
}

const distance = (plan: Plan, { trip, moved }: { readonly trip: number; readonly moved: Trip }): number =>
  Math.abs(plan.trips[trip]!.day - moved.day);

/** The same trip with other crews, by other vehicles of its kind, on other days. */
export function movesOf({ days, vehicles, routes, crews }: Problem, trip: Trip): readonly Trip[] {
  const { kind, source, conditionByDay, crewGroup } = routes[trip.route]!;
  const moves: Trip[] = [];
  for (let day = 0; day < days; day++) {
    if (conditionByDay[day]! < 0) continue;
    for (const [vehicle, { kind: its, home, dutyHours }] of vehicles.entries()) {
      if (its !== kind || home !== source || dutyHours[day] === 0) continue;
      if (crewGroup < 0) moves.push({ ...trip, day, vehicle });
      else
        for (const [crew, { groupsByDay }] of crews.entries())
          if (groupsByDay[day]!.includes(crewGroup)) moves.push({ ...trip, day, vehicle, crew });
    }
  }
  return moves;
}
