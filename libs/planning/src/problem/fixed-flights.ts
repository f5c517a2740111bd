import type { LegLoad } from '@drumline/loading';
import type { BookedRoute } from '@drumline/routing';
import { dayIndex, localDate } from '@drumline/units';
import type { BookedFlight, Scenario, StandingFlight } from '../scenario.js';
import type { CrewGroups } from './crew-groups.js';
import type { FlightLoads } from './flight-loads.js';
import type { BookedEntry, FlightOnDay, FrozenEntry } from './problem-map.js';
import { isWithin, placesOf, standingFlights } from './standing-flights.js';
import { isAbsent } from './vehicles.js';

/** What a plan cannot decide, and what it may keep of the standing plan. */
export interface FixedFlights {
  /** The booked flights of the horizon, then the frozen ones. */
  readonly booked: readonly BookedEntry[];
  readonly frozen: readonly FrozenEntry[];
  readonly standing: readonly StandingFlight[];
}

/**
 * The booked and standing flights of the horizon, with what they carry and burn on their day. A frozen flight with the
 * id of a booked one stands for that flight with the drums settled on it.
 */
export function fixedFlights(scenario: Scenario, loads: FlightLoads): FixedFlights {
  const { frozen, offered } = standingFlights(scenario);
  const dayOf = (date: string) => dayIndex(scenario.firstDay, date);
  const bookings = new Map(scenario.bookedFlights.map((flight) => [flight.id, flight]));
  const settled = new Set(frozen.map(({ id }) => id));
  const booked = scenario.bookedFlights
    .filter(({ id, date }) => isWithin(scenario, date) && !settled.has(id))
    .map((flight): BookedEntry => {
      const onDay = loads.bookedLoad(flight, typeOf(scenario, flight.aircraft), dayOf(flight.date));
      return { kind: 'booked', flight, onDay };
    });
  const constants = frozen.map((flight, i): FrozenEntry => {
    const day = dayOf(flight.date);
    const type = typeOf(scenario, flight.aircraft);
    const booking = bookings.get(flight.id);
    const onDay = booking ? loads.bookedLoad(booking, type, day) : loads.loadOf(type, placesOf(flight), day);
    return { flight, day, onDay, booked: booked.length + i };
  });
  const asRoutes = constants.map(({ flight, onDay }): BookedEntry => ({ kind: 'frozen', flight, onDay }));
  return { booked: [...booked, ...asRoutes], frozen: constants, standing: offered };
}

/**
 * Flights that are flown anyway as routes: drums may be added to a booked flight that is still to fly, on the legs
 * that its passengers and freight leave room on; nothing to a frozen one, which takes the hours of its pilot.
 */
export function bookedRoutes(
  scenario: Scenario,
  entries: readonly BookedEntry[],
  storeOf: ReadonlyMap<string, number>,
  groups: CrewGroups,
): readonly BookedRoute[] {
  const today = localDate(scenario.asOf, scenario.timeZone);
  return entries.map(({ kind, flight, onDay }) => {
    const places = kind === 'booked' ? bookedPlaces(flight) : placesOf(flight);
    const day = dayIndex(scenario.firstDay, flight.date);
    const pilot = kind === 'frozen' ? flight.pilot : undefined;
    const crewGroup = crewGroupOf(scenario, pilot, onDay, places, groups, flight.date < today);
    // A flight that nobody may fly is for somebody to decide on; it must not keep the others from being planned.
    const isCrewed = groups.anybodyOn(crewGroup, day);
    const aircraft = scenario.aircraft.find(({ tail }) => tail === flight.aircraft)!;
    const flies = onDay.closed === null && isCrewed && !isAbsent(aircraft, flight.date);
    const open = kind === 'booked' && flight.date >= today && flies;
    const landings = onceEach(onDay.load.legs.slice(0, -1));
    return {
      id: flight.id,
      day,
      source: storeOf.get(places[0]!)!,
      stops: landings.map(({ to }) => storeOf.get(to)!),
      legPacks: landings.map(({ drums }) => (open ? drums : 0)),
      blockHours: onDay.load.blockHours,
      dutyHours: onDay.load.dutyHours,
      crewGroup: isCrewed ? crewGroup : -1,
    };
  });
}

/** Where a flight lands twice at a place, drums leave it the first time; the legs of the second time bind what flies on. */
function onceEach(legs: readonly LegLoad[]): readonly Pick<LegLoad, 'to' | 'drums'>[] {
  let most = Number.POSITIVE_INFINITY;
  const seen = new Set<string>();
  return legs.flatMap(({ to, drums }) => {
    most = Math.min(most, drums);
    return seen.has(to) || !seen.add(to) ? [] : [{ to, drums: most }];
  });
}

/** A flight that names its pilot has that one; who flew a past flight that names nobody is not asked again. */
function crewGroupOf(
  scenario: Scenario,
  pilot: string | undefined,
  onDay: FlightOnDay,
  places: readonly string[],
  groups: CrewGroups,
  past: boolean,
): number {
  if (pilot !== undefined) return groups.named(pilot);
  return past || scenario.pilots.length === 0 ? -1 : groups.of(onDay.request.type.id, places);
}

export function bookedPlaces({ legs }: BookedFlight): string[] {
  return [legs[0]!.from, ...legs.map(({ to }) => to)];
}

export function typeOf(scenario: Scenario, tail: string): string {
  const aircraft = scenario.aircraft.find((each) => each.tail === tail);
  if (!aircraft)
    throw new Error(`There is no aircraft ${tail}; add it to the scenario or correct the flight.`);
  return aircraft.type;
}
