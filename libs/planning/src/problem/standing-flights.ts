import { dayIndex, localDate } from '@drumline/units';
import type { Scenario, StandingFlight, StandingStop } from '../scenario.js';

/** The standing flights of the horizon, by what a re-plan may do with them (conventions, "Frozen flights"). */
export interface StandingFlights {
  /** Constants: they are flown as they stand. */
  readonly frozen: readonly StandingFlight[];
  /** Offered on a day that is not past: they may move at the change price. */
  readonly offered: readonly StandingFlight[];
}

/**
 * Offered flights of a past day were not flown and are left out, as are flights before the first day. Offered drums on
 * a booked flight are no standing flight: the flight flies anyway, and a re-plan puts drums on it as it likes.
 */
export function standingFlights(scenario: Scenario): StandingFlights {
  const today = localDate(scenario.asOf, scenario.timeZone);
  const booked = new Set(scenario.bookedFlights.map(({ id }) => id));
  const ahead = scenario.flights.filter(({ date }) => isWithin(scenario, date));
  return {
    frozen: ahead.filter(({ state }) => state !== 'offered'),
    offered: ahead.filter(({ id, state, date }) => state === 'offered' && date >= today && !booked.has(id)),
  };
}

export function isWithin({ firstDay, days }: Scenario, date: string): boolean {
  const day = dayIndex(firstDay, date);
  return day >= 0 && day < days;
}

/** Places of a flight, from base to base. */
export function placesOf(flight: Pick<StandingFlight, 'from' | 'stops' | 'to'>): string[] {
  return [flight.from, ...flight.stops.map(({ place }) => place), flight.to];
}

/** Drums for a stop that may be used there: those on hold count in no level until others go in their place. */
export function usableDrums({ drums, heldDrums = 0 }: Pick<StandingStop, 'drums' | 'heldDrums'>): number {
  return drums - heldDrums;
}

export function heldDrumsOf(flight: Pick<StandingFlight, 'stops'>): number {
  return flight.stops.reduce((sum, { heldDrums = 0 }) => sum + heldDrums, 0);
}

export function drumsOf(flight: Pick<StandingFlight, 'stops'>): number {
  return flight.stops.reduce((sum, { drums }) => sum + drums, 0);
}
