import type { AircraftType, CabinConfiguration, StripLimit } from '@drumline/loading';
import {
  type Closures,
  closures,
  type DistanceTable,
  distanceTable,
  type ExpectedSurface,
  expectedSurface,
  type FlyingHours,
  type Place,
  type WindTable,
  windTable,
} from '@drumline/network';
import { daysBetween, type IsoDate, localDate } from '@drumline/units';
import { hasLeft } from '../flights/flight-state.js';
import type { Aircraft, BookedFlight, Pilot, Scenario, StandingFlight } from '../scenario.js';
import { type FlownLeg, recomputeLegs } from './recompute-legs.js';

/** What the checker looks at: the scenario by name, and every flight recomputed from it. */
export interface Survey extends Territory {
  readonly flights: readonly SurveyedFlight[];
}

export interface Territory {
  readonly scenario: Scenario;
  readonly place: (code: string) => Place;
  readonly pilot: (id: string) => Pilot;
  readonly aircraft: (tail: string) => Aircraft;
  readonly aircraftType: (id: string) => AircraftType;
  readonly booked: ReadonlyMap<string, BookedFlight>;
  readonly stripLimit: (place: string, type: string) => StripLimit | null;
  readonly distance: DistanceTable;
  readonly wind: WindTable;
  readonly surface: ExpectedSurface;
  readonly closures: Closures;
  /** The day of `asOf`. */
  readonly today: IsoDate;
}

export interface SurveyedFlight {
  readonly flight: StandingFlight;
  /** The booked flight whose spare payload it uses; null: a positioning flight. */
  readonly booked: BookedFlight | null;
  /** Day of the plan, from 1; outside 1 to `days`: not in the plan. */
  readonly day: number;
  readonly aircraft: Aircraft;
  readonly type: AircraftType;
  readonly configuration: CabinConfiguration;
  readonly rampFuelLb: number;
  readonly burnLb: number;
  readonly legs: readonly FlownLeg[];
  readonly blockHours: number;
  readonly dutyHours: number;
  /** Time that aircraft and pilot are taken. */
  readonly heldHours: number;
  /** Already under way or done, or of a day past: it counts, and no rule forbids it any more. */
  readonly isFact: boolean;
}

/** Reads the flights against the scenario. Throws where a flight names something that the scenario does not have. */
export function survey(scenario: Scenario, flights: readonly StandingFlight[]): Survey {
  const territory = surveyTerritory(scenario);
  return { ...territory, flights: flights.map((flight) => surveyFlight(territory, flight)) };
}

function surveyTerritory(scenario: Scenario): Territory {
  const hours: FlyingHours = { timeZone: scenario.timeZone, ...scenario.policy.flyingDay };
  const limits = new Map(scenario.stripLimits.map((limit) => [`${limit.place} ${limit.type}`, limit]));
  return {
    scenario,
    place: finder('place', scenario.places, (place) => place.code),
    pilot: finder('pilot', scenario.pilots, (pilot) => pilot.id),
    aircraft: finder('aircraft', scenario.aircraft, (aircraft) => aircraft.tail),
    aircraftType: finder('aircraft type', scenario.aircraftTypes, (type) => type.id),
    booked: new Map(scenario.bookedFlights.map((flight) => [flight.id, flight])),
    stripLimit: (place, type) => limits.get(`${place} ${type}`) ?? null,
    distance: distanceTable(scenario.places, scenario.distances),
    wind: windTable(scenario.winds),
    surface: expectedSurface(scenario.surfaceReports, scenario.asOf, hours),
    closures: closures(scenario.notices, hours),
    today: localDate(scenario.asOf, scenario.timeZone),
  };
}

function finder<T>(what: string, items: readonly T[], nameOf: (item: T) => string): (name: string) => T {
  const byName = new Map(items.map((item) => [nameOf(item), item]));
  return (name) => {
    const item = byName.get(name);
    if (!item)
      throw new Error(
        `A flight names ${what} ${name}, which is not in the scenario: add it or mend the flight.`,
      );
    return item;
  };
}

function surveyFlight(territory: Territory, flight: StandingFlight): SurveyedFlight {
  const { scenario } = territory;
  const booked = territory.booked.get(flight.id) ?? null;
  const aircraft = territory.aircraft(flight.aircraft);
  const type = territory.aircraftType(aircraft.type);
  const cabin = booked?.configuration ?? type.drumConfiguration;
  const configuration = finder('configuration', type.configurations, (item) => item.id)(cabin);
  const flown = recomputeLegs(territory, flight, booked, type, configuration);
  const turnRounds = (flown.legs.length * type.turnRoundMinutes) / 60;
  const dutyHours = flown.blockHours + turnRounds;
  const isFact = hasLeft(flight.state) || flight.date < territory.today;
  return {
    flight,
    booked,
    day: dayOf(scenario, flight.date),
    aircraft,
    type,
    configuration,
    ...flown,
    dutyHours,
    heldHours: Math.max(dutyHours, booked?.heldHours ?? 0),
    isFact,
  };
}

const dayOf = (scenario: Scenario, date: IsoDate): number => daysBetween(scenario.firstDay, date) + 1;
