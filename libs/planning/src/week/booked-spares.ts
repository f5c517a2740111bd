import { dayIndex } from '@drumline/units';
import { typeOf } from '../problem/fixed-flights.js';
import { flightLoads } from '../problem/flight-loads.js';
import { isWithin } from '../problem/standing-flights.js';
import { territoryOf } from '../problem/territory.js';
import type { Scenario } from '../scenario.js';

/** Drums that a flight which flies anyway could take beside what is booked on it. */
export interface BookedSpare {
  readonly id: string;
  readonly drums: number;
  /** Where they could be set down; null: nowhere. */
  readonly to: string | null;
}

/** The most drums that each booked flight of the scenario can set down at a landing before its last. */
export function bookedSpares(scenario: Scenario): readonly BookedSpare[] {
  const loads = flightLoads(scenario, territoryOf(scenario));
  return scenario.bookedFlights
    .filter(({ date }) => isWithin(scenario, date))
    .map((flight) => {
      const day = dayIndex(scenario.firstDay, flight.date);
      const { load, closed } = loads.bookedLoad(flight, typeOf(scenario, flight.aircraft), day);
      let room = closed === null ? Number.POSITIVE_INFINITY : 0;
      let best = { drums: 0, to: null as string | null };
      // Drums for a landing are aboard on every leg up to it.
      for (const leg of load.legs.slice(0, -1)) {
        room = Math.min(room, leg.drums);
        if (room > best.drums) best = { drums: room, to: leg.to };
      }
      return { id: flight.id, ...best };
    });
}
