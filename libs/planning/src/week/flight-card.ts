import type { SurfaceReport, SurfaceState } from '@drumline/network';
import {
  epochMinutes,
  type IsoInstant,
  instantAt,
  type Kilograms,
  kilograms,
  minutes,
} from '@drumline/units';
import type { MoneyParts, PlannedFlight } from '../flight-plan.js';
import { describeOneFlight } from '../flights/describe-flights.js';
import { flightCost } from '../flights/flight-cost.js';
import { type FlightSketch, sketchFlight } from '../flights/flight-sketch.js';
import { crewOfFlight } from '../load-sheet/crew-of-flight.js';
import { surfaceHeard } from '../load-sheet/surface-heard.js';
import { flightLoads } from '../problem/flight-loads.js';
import { drumsOf, isWithin } from '../problem/standing-flights.js';
import { type Territory, territoryOf } from '../problem/territory.js';
import type { Scenario, StandingFlight } from '../scenario.js';
import { type LegWithLimits, legsWithLimits } from './leg-limits.js';
import { mostThatMayGo } from './most-that-may-go.js';

/** What somebody decides a flight by, all of it by the facts of today. */
export interface FlightCard {
  readonly planned: PlannedFlight;
  /** Why it cannot be flown on its day at all; null: it can. */
  readonly closed: string | null;
  readonly load: CardLoad;
  readonly legs: readonly LegWithLimits[];
  /** As many of its drums as may go; null: all may. */
  readonly fewer: FewerDrums | null;
  readonly heard: readonly Heard[];
  readonly crew: readonly WhoIsFit[];
  readonly classes: readonly { readonly place: string; readonly stripClass: number }[];
}

interface CardLoad {
  readonly drums: number;
  /** At the planning weight of a drum. */
  readonly kg: Kilograms;
  readonly cost: MoneyParts;
}

/** `stops` without a drum: none may go. */
export interface FewerDrums extends CardLoad {
  readonly stops: StandingFlight['stops'];
  readonly legs: readonly LegWithLimits[];
}

/** What is known of the surface of a strip on the way, and what counts on the day of the flight. */
export interface Heard {
  readonly place: string;
  readonly counts: SurfaceState;
  readonly report: SurfaceReport | null;
  readonly staleAt: IsoInstant | null;
  readonly isStale: boolean;
}

/** A pilot of the operator, and whether a flight is for them. */
export interface WhoIsFit {
  readonly id: string;
  /** Null: fit for this flight, hours apart. */
  readonly whyNot: string | null;
}

/** The decision card of one of the scenario's own flights; null: it is not among them, or outside its days. */
export function flightCard(scenario: Scenario, id: string): FlightCard | null {
  const flight = scenario.flights.find((each) => each.id === id);
  if (flight === undefined || !isWithin(scenario, flight.date)) return null;
  const territory = territoryOf(scenario);
  const loads = flightLoads(scenario, territory);
  const sketch = sketchFlight(scenario, loads, flight);
  const stops = mostThatMayGo(sketch);
  return {
    planned: describeOneFlight(scenario, scenario.flights, id)!,
    closed: sketch.onDay.closed,
    load: loadOf(scenario, sketch),
    legs: legsWithLimits(sketch, surfaceHeard(scenario)),
    fewer:
      stops === null
        ? null
        : fewerDrums(scenario, sketch, stops, (with_) => sketchFlight(scenario, loads, with_)),
    heard: flight.stops.map(({ place }) => heardOf(scenario, territory, place, sketch.day - 1)),
    crew: crewOfFlight(scenario, flight),
    classes: flight.stops.flatMap(({ place }) => {
      const { stripClass } = territory.place(place);
      return stripClass === null ? [] : [{ place, stripClass }];
    }),
  };
}

const loadOf = (scenario: Scenario, sketch: FlightSketch): CardLoad => ({
  drums: sketch.drums,
  kg: kilograms(sketch.drums * scenario.policy.drum.grossKg),
  cost: flightCost(scenario, sketch),
});

function fewerDrums(
  scenario: Scenario,
  { flight, booked }: FlightSketch,
  stops: StandingFlight['stops'],
  sketchOf: (flight: StandingFlight) => FlightSketch,
): FewerDrums {
  // Without a drum a positioning flight is no flight: it keeps its way, so that its limits can be told.
  const way =
    stops.length > 0 || booked !== null ? stops : flight.stops.map(({ place }) => ({ place, drums: 0 }));
  const sketch = sketchOf({ ...flight, stops: way });
  return {
    ...loadOf(scenario, sketch),
    stops: drumsOf({ stops }) > 0 ? stops : [],
    legs: legsWithLimits(sketch, surfaceHeard(scenario)),
  };
}

function heardOf({ surfaceReports, asOf }: Scenario, territory: Territory, code: string, day: number): Heard {
  const now = epochMinutes(asOf);
  const report = surfaceReports
    .filter(({ place, at }) => place === code && epochMinutes(at) <= now)
    .reduce<SurfaceReport | null>((last, each) => (last === null || each.at >= last.at ? each : last), null);
  const counts = territory.surface(code, day);
  if (report === null) return { place: code, counts, report, staleAt: null, isStale: false };
  const staleAt = minutes(epochMinutes(report.at) + territory.place(code).surface.staleAfterHours * 60);
  return { place: code, counts, report, staleAt: instantAt(staleAt), isStale: staleAt < now };
}
