import type { Problem, Route, StandingVisit } from '@drumline/routing';
import { dayIndex } from '@drumline/units';
import type { EndTarget } from '../flight-plan.js';
import type { Scenario, StandingFlight } from '../scenario.js';
import { baseStores } from './base-stores.js';
import { cacheStores } from './cache-stores.js';
import { crewGroups } from './crew-groups.js';
import { flightLoads } from './flight-loads.js';
import { bookedEntries, bookedRoutes, frozenEntries, typeOf } from './frozen-flights.js';
import { pricedStores } from './priced-stores.js';
import type { BookedEntry, BuiltProblem } from './problem-map.js';
import { exactRoute, poolOf, type RouteMaker } from './routes.js';
import { placesOf, standingFlights } from './standing-flights.js';
import { emptyStore, storeEntries } from './store-entries.js';
import { territoryOf } from './territory.js';
import { vehiclesOf } from './vehicles.js';

/**
 * The routing problem of a scenario, and the map back. Levels are in litres, packs are drums, money is in cents, days
 * count from 0; stores are the bases, then the caches, then other places that a flight touches. The routes are the
 * pool, and those of the standing and the hand-made flights exactly as they are.
 */
export function buildProblem(scenario: Scenario, endTarget: EndTarget): BuiltProblem {
  const territory = territoryOf(scenario);
  const loads = flightLoads(scenario, territory);
  const groups = crewGroups(scenario, territory);
  const { frozen: constants, offered } = standingFlights(scenario);

  const stores = storeEntries(scenario);
  const storeOf = new Map(stores.map(({ place }, index) => [place, index]));
  const bookedFlights = bookedEntries(scenario, loads);
  const frozen = frozenEntries(scenario, loads, constants, bookedFlights.length);
  const booked: readonly BookedEntry[] = [
    ...bookedFlights,
    ...frozen.map(({ flight, onDay }) => ({ kind: 'frozen', flight, onDay }) as const),
  ];

  const maker: RouteMaker = { scenario, territory, loads, groups, stores, storeOf };
  const routes = withExactRoutes(maker, poolOf(maker), [...offered, ...scenario.handPlan]);
  const travelledAnyway = bookedRoutes(scenario, booked, storeOf, groups);
  const unpriced = [
    ...baseStores(scenario, frozen, bookedFlights),
    ...cacheStores(scenario, constants),
    ...stores.filter(({ kind }) => kind === 'no cache').map(({ place }) => emptyStore(place, scenario.days)),
  ];
  const problem: Problem = {
    days: scenario.days,
    packSize: scenario.policy.drum.fillLitres,
    stores: pricedStores(scenario, unpriced, routes, endTarget),
    vehicles: vehiclesOf(scenario, territory, storeOf, frozen),
    routes,
    booked: travelledAnyway,
    crews: groups.crews(),
    standing: offered.map((flight) => standingVisit(scenario, storeOf, flight)),
    changePrice: scenario.policy.changePrice,
  };
  const map = {
    dates: territory.dates,
    stores,
    storeOf,
    vehicles: scenario.aircraft,
    crews: scenario.pilots,
    booked,
    standing: offered,
    frozen,
    loadOf: loads.loadOf,
    surfaceOf: territory.surface,
  };
  return { scenario, endTarget, problem, map };
}

function withExactRoutes(
  maker: RouteMaker,
  pool: readonly Route[],
  flights: readonly StandingFlight[],
): readonly Route[] {
  const known = new Set(pool.map(routeKey));
  const more: Route[] = [];
  for (const flight of flights) {
    const route = exactRoute(maker, typeOf(maker.scenario, flight.aircraft), placesOf(flight));
    if (!known.has(routeKey(route))) more.push(route);
    known.add(routeKey(route));
  }
  return [...pool, ...more];
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
