import { bookedFaults, type Fault, mostPassengers, routeOfBooked, type Scenario } from '@drumline/planning';
import type { IsoDate } from '@drumline/units';

/** A flight that flies anyway, no drum on it yet. */
export interface TouchedBooked {
  readonly flight: string;
  readonly date: IsoDate;
  readonly aircraft: string;
  readonly route: readonly string[];
  readonly purpose: string;
  readonly passengers: number;
  /** What forbids it that does not forbid it now; null: it stands as it is booked. */
  readonly breaks: string | null;
}

/** A picture of the territory with the faults of its flights. */
export interface Checked {
  readonly scenario: Scenario;
  readonly faults: readonly Fault[];
}

/** Every booked flight without drums, and what one picture of the territory forbids of it that another does not. */
export const touchedBooked = (before: Checked, after: Checked): readonly TouchedBooked[] => {
  const known = bookedFaults(before.scenario, before.faults);
  const found = bookedFaults(after.scenario, after.faults);
  const standing = new Set(after.scenario.flights.map(({ id }) => id));
  return after.scenario.bookedFlights
    .filter(({ id }) => !standing.has(id))
    .map((flight) => {
      const [was, is] = [known.get(flight.id), found.get(flight.id)];
      return {
        flight: flight.id,
        date: flight.date,
        aircraft: flight.aircraft,
        route: routeOfBooked(flight),
        purpose: flight.purpose,
        passengers: mostPassengers(flight),
        breaks: is === undefined || is.what === was?.what ? null : `${is.what} ${is.mend}`,
      };
    });
};
