import type { LegLimit } from '@drumline/loading';
import { dayIndex } from '@drumline/units';
import { typeOf } from '../problem/fixed-flights.js';
import { type FlightLoads, flightLoads } from '../problem/flight-loads.js';
import { isWithin } from '../problem/standing-flights.js';
import { territoryOf } from '../problem/territory.js';
import type { BookedFlight, Scenario } from '../scenario.js';

/** Drums that a flight which flies anyway could take beside what is booked on it. */
export interface BookedSpare {
  readonly id: string;
  readonly drums: number;
  /** Where they could be set down; null: nowhere. */
  readonly to: string | null;
}

/** The same leg by leg and landing by landing. */
export interface BookedRoom {
  /** Why it cannot be flown on its day; null: it can. */
  readonly closed: string | null;
  readonly legs: readonly RoomOnLeg[];
  /** Every place where it lands before its last landing, once. */
  readonly landings: readonly RoomForLanding[];
}

export interface RoomOnLeg {
  readonly from: string;
  readonly to: string;
  readonly drums: number;
  /** The limit that keeps a further drum off. */
  readonly limit: Pick<LegLimit, 'name' | 'place'>;
  /** Why its balance could not be judged; null: it was. */
  readonly balanceUnknown: string | null;
}

export interface RoomForLanding {
  readonly place: string;
  readonly drums: number;
  /** The leg, as an index, that lets no more come so far. */
  readonly leg: number;
}

/** The most drums that each booked flight of the scenario can set down at a landing before its last. */
export function bookedSpares(scenario: Scenario): readonly BookedSpare[] {
  const loads = flightLoads(scenario, territoryOf(scenario));
  return scenario.bookedFlights
    .filter(({ date }) => isWithin(scenario, date))
    .map((flight) => {
      const { landings } = roomOf(scenario, loads, flight);
      const none = { place: null as string | null, drums: 0 };
      const best = landings.reduce((most, each) => (each.drums > most.drums ? each : most), none);
      return { id: flight.id, drums: best.drums, to: best.place };
    });
}

/** Room for drums on one booked flight; null: its day is outside the days of the scenario. */
export const bookedRoom = (scenario: Scenario, flight: BookedFlight): BookedRoom | null =>
  isWithin(scenario, flight.date)
    ? roomOf(scenario, flightLoads(scenario, territoryOf(scenario)), flight)
    : null;

function roomOf(scenario: Scenario, loads: FlightLoads, flight: BookedFlight): BookedRoom {
  const day = dayIndex(scenario.firstDay, flight.date);
  const { load, closed } = loads.bookedLoad(flight, typeOf(scenario, flight.aircraft), day);
  const legs = load.legs.map(({ from, to, drums, binding, balanceUnknown }) => ({
    ...{ from, to, drums: closed === null ? drums : 0, balanceUnknown },
    limit: { name: binding.name, place: binding.place },
  }));
  return { closed, legs, landings: landingsOf(legs) };
}

/** Drums for a landing are aboard on every leg up to it. */
function landingsOf(legs: readonly RoomOnLeg[]): readonly RoomForLanding[] {
  let tightest = 0;
  const landings = legs.slice(0, -1).map(({ to, drums }, at) => {
    if (drums < legs[tightest]!.drums) tightest = at;
    return { place: to, drums: legs[tightest]!.drums, leg: tightest };
  });
  return landings.filter(({ place }, at) => landings.findIndex((each) => each.place === place) === at);
}
