import type { Problem, Route, StandingVisit } from '@drumline/routing';
import { dayIndex } from '@drumline/units';
import type { EndTarget } from '../flight-plan.js';
import type { Scenario, StandingFlight } from '../scenario.js';
import { awayHours } from './away-hours.js';
import { crewGroups } from './crew-groups.js';
import { bookedRoutes, fixedFlights, typeOf } from './fixed-flights.js';
import { flightLoads } from './flight-loads.js';
import { pricedStores } from './priced-stores.js';
import type { BuiltProblem } from './problem-map.js';
import { exactRoute, poolOf, type RouteMaker } from './routes.js';
import { placesOf } from './standing-flights.js';
import { storeEntries, unpricedStores } from './store-entries.js';
import { territoryOf } from './territory.js';
import { vehiclesOf } from './vehicles.js';

/**
 * The routing problem of a scenario, and the map back. Levels are in litres, packs are drums, money is in cents, days
 * count from 0; stores are the bases, then the caches, then other places that a flight touches. The routes are the
 * pool, and those of the standing and the hand-made flights exactly as they are.
 */
export function buildProblem(
  scenario: Scenario,
  endTarget: EndTarget,
  others: readonly StandingFlight[] = [],
): BuiltProblem {
  const territory = territoryOf(scenario);
  const loads = flightLoads(scenario, territory);
  const groups = crewGroups(scenario, territory);
  const stores = storeEntries(scenario);
  const storeOf = new Map(stores.map(({ place }, index) => [place, index]));
  const maker = { scenario, territory, loads, groups, stores, storeOf };

  const fixed = fixedFlights(scenario, loads);
  const booked = bookedRoutes(scenario, fixed.booked, storeOf, groups);
  const routes = withExactRoutes(maker, poolOf(maker), [...fixed.standing, ...scenario.handPlan, ...others]);
  const away = awayHours(maker, routes);
  const problem: Problem = {
    days: scenario.days,
    packSize: scenario.policy.drum.fillLitres,
    stores: pricedStores(scenario, unpricedStores(scenario, stores, fixed), routes, booked, endTarget),
    vehicles: vehiclesOf({
      scenario,
      territory,
      storeOf,
      frozen: fixed.frozen,
      awayHours: away,
    }),
    routes,
    booked,
    crews: groups.crews(booked.slice(fixed.booked.length - fixed.frozen.length), (day) =>
      // Booked flights fly at their own hours: on their days the light at the strips of the plan says nothing.
      booked.some((flight) => flight.day === day) ? Number.POSITIVE_INFINITY : away.ofPerson(day),
    ),
    standing: fixed.standing.map((flight) => standingVisit(scenario, storeOf, flight)),
    changePrice: scenario.policy.changePrice,
  };
  const { dates, surface } = territory;
  const people = { vehicles: scenario.aircraft, crews: scenario.pilots };
  const map = { dates, stores, storeOf, ...people, ...fixed, loadOf: loads.loadOf, surfaceOf: surface };
  return { scenario, endTarget, problem, map };
}

function withExactRoutes(
  maker: RouteMaker,
  pool: readonly Route[],
  flights: readonly StandingFlight[],
): readonly Route[] {
  const known = new Set(pool.map(routeKey));
  const more: Route[] = [];
  for (const flight of flights.filter(landsOnceEach)) {
    const route = exactRoute(maker, typeOf(maker.scenario, flight.aircraft), placesOf(flight));
    if (!known.has(routeKey(route))) more.push(route);
    known.add(routeKey(route));
  }
  return [...pool, ...more];
}

/** A route lands once at each of its stops. */
function landsOnceEach({ stops }: StandingFlight): boolean {
  return new Set(stops.map(({ place }) => place)).size === stops.length;
}

/** Equal for routes of the same type over the same places. */
export function routeKey({
  kind,
  source,
  stops,
  end,
}: Pick<Route, 'kind' | 'source' | 'stops' | 'end'>): string {
  return `${kind} ${source} ${stops.join()} ${end}`;
}

function standingVisit(
  scenario: Scenario,
  storeOf: ReadonlyMap<string, number>,
  flight: StandingFlight,
): StandingVisit {
  return {
    vehicle: scenario.aircraft.findIndex(({ tail }) => tail === flight.aircraft),
    day: dayIndex(scenario.firstDay, flight.date),
    stops: flight.stops.map(({ place }) => storeOf.get(place)!),
  };
}
