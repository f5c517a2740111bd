import type { Plan } from '@drumline/routing';
import { addDays } from '@drumline/units';
import type { BuiltProblem } from '../problem/problem-map.js';
import type { StandingFlight } from '../scenario.js';
import { likelyPairs } from './likely-pairs.js';

/**
 * The flights of a routing plan by name: frozen ones as they stand, booked ones (with the drums put on them), and the
 * new ones. Frozen and booked flights keep their ids, and so does an offered flight that is found again on its day,
 * aircraft and route (of several alike, the one with the same drums), or else moved to another day that is offered or to
 * another aircraft on the same route, the nearest first; the others are numbered "P01" on, by day, aircraft and order.
 */
export function plannedTrips(built: BuiltProblem, plan: Plan): readonly StandingFlight[] {
  return [...fixedFlights(built, plan), ...numbered(built, tripFlights(built, plan))];
}

/** Booked and frozen flights, with the pilot found for those that named none. */
export function fixedFlights({ problem, map }: BuiltProblem, plan: Plan): readonly StandingFlight[] {
  return map.booked.map((entry, index) => {
    const crew = plan.bookedCrews[index] ?? -1;
    const pilot = entry.kind === 'frozen' && entry.flight.pilot ? entry.flight.pilot : map.crews[crew]?.id;
    const crewed = pilot === undefined ? {} : { pilot };
    if (entry.kind === 'frozen') return { ...entry.flight, ...crewed };
    const { id, date, aircraft, legs, departs } = entry.flight;
    const stops = problem.booked[index]!.stops.map((store, stop) => ({
      place: map.stores[store]!.place,
      drums: plan.bookedDrops[index]?.[stop] ?? 0,
    }));
    return {
      id,
      state: 'offered',
      date,
      aircraft,
      from: legs[0]!.from,
      stops,
      to: legs.at(-1)!.to,
      ...(departs !== undefined && { departs }),
      ...crewed,
    };
  });
}

/** A flight that has no number yet. */
export type Unnamed = Omit<StandingFlight, 'id'>;

/** The trips of a routing plan as flights, in the plan's order; a stop where nothing is set down is no stop of a flight. */
export function tripFlights({ problem, map }: BuiltProblem, plan: Plan): readonly Unnamed[] {
  return plan.trips.map((trip) => {
    const route = problem.routes[trip.route]!;
    const pilot = map.crews[trip.crew]?.id;
    return {
      state: 'offered',
      date: map.dates[trip.day]!,
      aircraft: map.vehicles[trip.vehicle]!.tail,
      from: map.stores[route.source]!.place,
      stops: route.stops
        .map((store, stop) => ({ place: map.stores[store]!.place, drums: trip.drops[stop]! }))
        .filter(({ drums }) => drums > 0),
      to: map.stores[route.end]!.place,
      ...(pilot !== undefined && { pilot }),
    };
  });
}

function numbered({ scenario, map }: BuiltProblem, flights: readonly Unnamed[]): readonly StandingFlight[] {
  const used = new Set(
    [...map.standing, ...map.frozen.map((entry) => entry.flight)].map((flight) => flight.id),
  );
  const order = (flight: Unnamed): string => `${flight.date} ${flight.aircraft}`;
  let number = 0;
  const nextId = (): string => {
    const id = `P${String(++number).padStart(2, '0')}`;
    return used.has(id) ? nextId() : id;
  };
  const lastOffered = addDays(scenario.firstDay, scenario.offeredDays - 1);
  // What falls on a later day is an idea, which nobody is offered under a number of its own.
  const kept = keptNumbers(
    map.standing,
    flights.filter(({ date }) => date <= lastOffered),
  );
  return flights
    .toSorted((one, other) => order(one).localeCompare(order(other)))
    .map((flight) => ({ id: kept.get(flight) ?? nextId(), ...flight }));
}

/** A number that the planner gave: the flight is known to nobody yet, and another plan may give the same to another. */
export const isPlannersNumber = (id: string): boolean => /^P\d+$/.test(id);

/** An unchanged flight has its number before another of the same trip with other drums gets it, and before one that has moved. */
function keptNumbers(
  offered: readonly StandingFlight[],
  flights: readonly Unnamed[],
): ReadonlyMap<Unnamed, string> {
  const kept = new Map<Unnamed, string>();
  const free = new Set(offered);
  for (const { earlier, later } of likelyPairs(offered, flights))
    if (!kept.has(later) && free.delete(earlier)) kept.set(later, earlier.id);
  return kept;
}
