import { buildPool, type Route, type RouteConditions, type Start } from '@drumline/routing';
import type { Scenario } from '../scenario.js';
import type { CrewGroups } from './crew-groups.js';
import type { FlightLoads } from './flight-loads.js';
import type { StoreEntry } from './problem-map.js';
import type { Territory } from './territory.js';

/** How far the pool looks: three stops reach every pair of near strips, and a longer way round does not pay. */
const poolShape = { maxStops: 3, neighbours: 8, detour: 1.5 };

/** What routes are made from. */
export interface RouteMaker {
  readonly scenario: Scenario;
  readonly territory: Territory;
  readonly loads: FlightLoads;
  readonly groups: CrewGroups;
  readonly stores: readonly StoreEntry[];
  readonly storeOf: ReadonlyMap<string, number>;
}

/** Every round worth considering, from each base with an aircraft of the type to the strips that keep a cache. */
export function poolOf(maker: RouteMaker): readonly Route[] {
  const { territory, stores } = maker;
  const rounds = roundsOf(maker);
  return buildPool({
    ...poolShape,
    days: territory.dates.length,
    starts: startsOf(maker),
    stops: [...stores.keys()].filter((store) => takesDrums(maker, store)),
    distance: (from, to) => territory.distance(stores[from]!.place, stores[to]!.place),
    conditionsKey: (start, stops, day) => rounds(start, stops).keys[day]!,
    conditionsOf: (start, stops, day) => conditionsOf(maker, start.kind, rounds(start, stops).places, day),
    crewGroupOf: (start, stops) => rounds(start, stops).group,
  });
}

/** A round as the pool asks for it, day by day: worked out once. A day on which nobody is fit to fly it has no key. */
function roundsOf({ groups, loads, stores }: RouteMaker) {
  const known = new WeakMap<readonly number[], Round>();
  const make = ({ kind, source }: Start, stops: readonly number[]): Round => {
    const places = [source, ...stops, source].map((store) => stores[store]!.place);
    const group = groups.of(kind, places);
    const keys = loads.conditionsKeys(places).map((key, day) => (groups.anybodyOn(group, day) ? key : null));
    return { places, group, keys };
  };
  return (start: Start, stops: readonly number[]): Round => {
    const round = known.get(stops) ?? make(start, stops);
    known.set(stops, round);
    return round;
  };
}

interface Round {
  readonly places: readonly string[];
  readonly group: number;
  readonly keys: readonly (string | null)[];
}

function startsOf({ scenario, storeOf }: RouteMaker): Start[] {
  const starts = scenario.aircraft.map(({ type, home }) => ({ kind: type, source: storeOf.get(home)! }));
  const keys = starts.map(({ kind, source }) => `${kind} ${source}`);
  return starts.filter((_, i) => keys.indexOf(keys[i]!) === i);
}

function takesDrums({ territory, stores }: RouteMaker, store: number): boolean {
  const { kind, place } = stores[store]!;
  return kind === 'cache' && territory.place(place).kind === 'strip';
}

/** Hours, cost and drums of a flight over these places on a day; null: it cannot be flown. */
function conditionsOf(
  { loads }: RouteMaker,
  type: string,
  places: readonly string[],
  day: number,
): RouteConditions | null {
  const { load, ownFuelLitres } = loads.loadOf(type, places, day);
  if (!load.flyable) return null;
  return {
    blockHours: load.blockHours,
    dutyHours: load.dutyHours,
    cost: load.cost,
    legPacks: load.legs.slice(0, -1).map(({ drums }) => drums),
    ownUse: ownFuelLitres,
  };
}

/**
 * The one route over exactly these places, whatever the pool thinks of it. A day on which a rule of the loading forbids
 * it, or a place or leg is closed, has no conditions; that nobody is fit to fly it is left to the crews.
 */
export function exactRoute(maker: RouteMaker, type: string, places: readonly string[]): Route {
  const { loads, groups, storeOf } = maker;
  const conditions: RouteConditions[] = [];
  const known = new Map<string, number>();
  const conditionByDay = loads.conditionsKeys(places).map((key, day) => {
    if (key === null) return -1;
    const found = known.get(key);
    if (found !== undefined) return found;
    const made = conditionsOf(maker, type, places, day);
    const index = made === null ? -1 : conditions.push(made) - 1;
    known.set(key, index);
    return index;
  });
  const [source, ...rest] = places.map((code) => storeOf.get(code)!);
  return {
    kind: type,
    source: source!,
    stops: rest.slice(0, -1),
    end: rest.at(-1)!,
    conditions,
    conditionByDay,
    crewGroup: groups.of(type, places),
  };
}
