import { dayIndex } from '@drumline/units';
import type { FlightLoads } from '../problem/flight-loads.js';
import type { FlightOnDay } from '../problem/problem-map.js';
import { drumsOf, placesOf } from '../problem/standing-flights.js';
import type { BookedFlight, Scenario, StandingFlight } from '../scenario.js';

/** A flight with what the loading rules say of it on its day. */
export interface FlightSketch {
  readonly flight: StandingFlight;
  /** Null: a positioning flight. */
  readonly booked: BookedFlight | null;
  /** Day of the plan, from 1. */
  readonly day: number;
  readonly type: string;
  readonly onDay: FlightOnDay;
  readonly drums: number;
  /** Drums set down at the end of each leg, and drums aboard on it. */
  readonly dropsByLeg: readonly number[];
  /** The flight's stop at the end of each leg, as an index; -1: none. */
  readonly stopByLeg: readonly number[];
  readonly aboard: readonly number[];
}

export function sketchFlight(scenario: Scenario, loads: FlightLoads, flight: StandingFlight): FlightSketch {
  const booked = scenario.bookedFlights.find(({ id }) => id === flight.id) ?? null;
  const { type } = scenario.aircraft.find(({ tail }) => tail === flight.aircraft)!;
  const day = dayIndex(scenario.firstDay, flight.date);
  const onDay = booked ? loads.bookedLoad(booked, type, day) : loads.loadOf(type, placesOf(flight), day);
  const stopByLeg = stopsOnLegs(flight, onDay);
  const dropsByLeg = stopByLeg.map((stop) => flight.stops[stop]?.drums ?? 0);
  const aboard = dropsByLeg.map((_, leg) => dropsByLeg.slice(leg).reduce((sum, drums) => sum + drums, 0));
  return { flight, booked, day: day + 1, type, onDay, drums: drumsOf(flight), dropsByLeg, stopByLeg, aboard };
}

/** A stop is the next landing there on the way. */
function stopsOnLegs({ stops }: StandingFlight, { load }: FlightOnDay): readonly number[] {
  let next = 0;
  return load.legs.map((leg) => (stops[next]?.place === leg.to ? next++ : -1));
}
