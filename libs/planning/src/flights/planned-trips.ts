import type { Plan } from '@drumline/routing';
import { addDays, daysBetween } from '@drumline/units';
import type { BuiltProblem } from '../problem/problem-map.js';
import type { StandingFlight } from '../scenario.js';

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

/** An unchanged flight has its number before another of the same trip with other drums gets it. */
function keptNumbers(
  offered: readonly StandingFlight[],
  flights: readonly Unnamed[],
): ReadonlyMap<Unnamed, string> {
  const kept = new Map<Unnamed, string>();
  const free = new Set(offered);
  const keep = (again: StandingFlight, flight: Unnamed): void => {
    if (kept.has(flight) || !free.delete(again)) return;
    kept.set(flight, again.id);
  };
  for (const isAgain of [sameTripAndDrums, sameTrip])
    for (const flight of flights) {
      const again = [...free].find((each) => isAgain(each, flight));
      if (again !== undefined) keep(again, flight);
    }
  for (const { again, flight } of movedPairs([...free], flights)) keep(again, flight);
  return kept;
}

/** Flights on one route, on another day or aircraft, the likeliest to be the same first. */
function movedPairs(offered: readonly StandingFlight[], flights: readonly Unnamed[]) {
  const unlikeness = (again: StandingFlight, flight: Unnamed): number =>
    Math.abs(daysBetween(again.date, flight.date)) * 4 +
    (again.aircraft === flight.aircraft ? 0 : 2) +
    (sameDrums(again, flight) ? 0 : 1);
  return offered
    .flatMap((again) =>
      flights
        .filter((flight) => routeKey(flight) === routeKey(again))
        .map((flight) => ({ again, flight, unlike: unlikeness(again, flight) })),
    )
    .sort((one, other) => one.unlike - other.unlike);
}

const routeKey = ({ from, stops, to }: Unnamed): string =>
  [from, ...stops.map((stop) => stop.place), to].join(' ');

const tripKey = (flight: Unnamed): string => [flight.date, flight.aircraft, routeKey(flight)].join(' ');

const sameTrip = (one: Unnamed, other: Unnamed): boolean => tripKey(one) === tripKey(other);

const sameTripAndDrums = (one: Unnamed, other: Unnamed): boolean =>
  sameTrip(one, other) && sameDrums(one, other);

const sameDrums = (one: Unnamed, other: Unnamed): boolean =>
  one.stops.every((stop, index) => stop.drums === other.stops[index]?.drums);
