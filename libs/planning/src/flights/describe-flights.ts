import type { CacheProjection } from '@drumline/stock';
import { type ClockTime, minutesOfDay } from '@drumline/units';
import { sumMoney } from '../differences/plan-totals.js';
import type { BaseUse, EndTarget, MoneyParts, PlannedFlight } from '../flight-plan.js';
import { endTargets } from '../problem/end-targets.js';
import { flightLoads } from '../problem/flight-loads.js';
import { isWithin } from '../problem/standing-flights.js';
import { stockOutlook } from '../problem/stock-outlook.js';
import { territoryOf } from '../problem/territory.js';
import type { ReasonPicture } from '../reasons/compared-levels.js';
import { flightReason } from '../reasons/flight-reason.js';
import type { Scenario, StandingFlight } from '../scenario.js';
import { baseUse } from './base-use.js';
import { flightCost } from './flight-cost.js';
import { flightLegs } from './flight-legs.js';
import { type FlightSketch, sketchFlight } from './flight-sketch.js';
import { flightStops } from './flight-stops.js';
import { flightTimes } from './flight-times.js';
import { projectScenario } from './project.js';

/** Flights as people read them, with the stock and money that result. */
export interface DescribedFlights {
  readonly flights: readonly PlannedFlight[];
  readonly caches: readonly CacheProjection[];
  readonly bases: readonly BaseUse[];
  readonly cost: MoneyParts;
}

/**
 * Flights of a plan, made by hand or found, in the order of day, departure and aircraft: what each leg carries and what
 * binds, times, cost, why it flies. A flight with the id of a booked flight stands for the drums put on it. Flights
 * outside the days of the plan are left out. Money in cents, weights in lb, fuel in litres.
 */
export function describeFlights(
  scenario: Scenario,
  standing: readonly StandingFlight[],
  endTarget: EndTarget,
): DescribedFlights {
  const { loads, sketches, times, picture } = pictureOf(scenario, standing, endTarget);
  const { caches } = picture;
  const described = sketches
    .map((sketch) => describeFlight(picture, sketch, times.get(sketch.flight.id)!))
    .sort(byDeparture);
  return {
    flights: described,
    caches,
    bases: baseUse(scenario, loads, sketches),
    cost: sumMoney(described.map(({ cost }) => cost)),
  };
}

/**
 * One flight among the others, as `describeFlights` has it, without the work for all of them. Undefined: it is not among
 * them, or outside the days of the plan.
 */
export function describeOneFlight(
  scenario: Scenario,
  standing: readonly StandingFlight[],
  id: string,
): PlannedFlight | undefined {
  const { sketches, times, picture } = pictureOf(scenario, standing, 'operator');
  const sketch = sketches.find(({ flight }) => flight.id === id);
  return sketch && describeFlight(picture, sketch, times.get(id)!);
}

function pictureOf(scenario: Scenario, standing: readonly StandingFlight[], endTarget: EndTarget) {
  const loads = flightLoads(scenario, territoryOf(scenario));
  const flights = standing.filter(({ date }) => isWithin(scenario, date));
  const caches = projectScenario(scenario, flights);
  const sketches = flights.map((flight) => sketchFlight(scenario, loads, flight));
  const times = flightTimes(scenario, sketches, caches);
  const targets = endTargets(scenario, endTarget);
  const picture: ReasonPicture = {
    scenario,
    outlook: stockOutlook(scenario),
    flights,
    caches,
    endTargets: new Map(scenario.caches.map(({ place }, index) => [place, targets[index]!])),
  };
  return { loads, sketches, times, picture };
}

const byDeparture = (one: PlannedFlight, other: PlannedFlight): number =>
  one.day - other.day ||
  one.departs.localeCompare(other.departs) ||
  one.aircraft.localeCompare(other.aircraft);

const noon = minutesOfDay('12:00');

function describeFlight(picture: ReasonPicture, sketch: FlightSketch, departs: ClockTime): PlannedFlight {
  const { flight, booked, day, type, onDay, drums } = sketch;
  const cost = flightCost(picture.scenario, sketch);
  return {
    id: flight.id,
    kind: booked ? 'booked' : 'positioning',
    state: flight.state,
    date: flight.date,
    day,
    departs,
    half: minutesOfDay(departs) < noon ? 'morning' : 'afternoon',
    aircraft: flight.aircraft,
    type,
    pilot: flight.pilot ?? null,
    from: flight.from,
    to: flight.to,
    legs: flightLegs(sketch),
    stops: flightStops(picture, sketch),
    drums,
    litres: cost.litres,
    rampFuelLb: onDay.load.rampFuelLb,
    ownFuelLitres: onDay.ownFuelLitres,
    blockHours: onDay.load.blockHours,
    dutyHours: onDay.load.dutyHours,
    cost,
    reason: flightReason(picture, flight, day),
    needsDecision: null,
  };
}
