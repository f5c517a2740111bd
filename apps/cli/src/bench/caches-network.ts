import {
  buildPool,
  type PoolRules,
  type Problem,
  type RouteConditions,
  type Start,
  type Store,
  type StorePrices,
  type Vehicle,
} from '@drumline/routing';

/** A benchmark network: bases, strips with caches, aeroplanes; drums are the unit of stock, money is whole. */
export interface CachesNetwork {
  readonly name: string;
  readonly days: number;
  readonly drumGrossKg: number;
  readonly limits: {
    readonly dailyBlockHours: number;
    readonly dailyDutyHours: number;
    readonly sevenDayDutyHours: number;
    readonly reserveHours: number;
    readonly taxiKg: number;
    readonly baseTurnHours: number;
    readonly stopTurnHours: number;
    readonly hoursAddedPerLeg: number;
  };
  readonly penalties: {
    readonly belowMinimumPerDrumDay: number;
    readonly belowCriticalPerDrumDay: number;
    readonly unmetPerDrum: number;
    readonly belowEndTargetPerDrum: number;
  };
  readonly bases: readonly (Point & {
    readonly id: string;
    readonly stockDrums: number;
    readonly resupplyDrumsByDay: readonly number[];
  })[];
  readonly types: readonly AeroplaneType[];
  readonly aircraft: readonly {
    readonly id: string;
    readonly type: string;
    readonly base: string;
    readonly blockHoursByDay: readonly number[];
  }[];
  readonly caches: readonly NetworkCache[];
}

interface Point {
  readonly xNm: number;
  readonly yNm: number;
}

export interface AeroplaneType {
  readonly id: string;
  readonly cruiseKt: number;
  readonly burnKgPerHour: number;
  readonly operatingWeightKg: number;
  readonly maxTakeoffKg: number;
  readonly maxLandingKg: number;
  readonly drumPositions: number;
  readonly costPerBlockHour: number;
  readonly feePerStop: number;
}

export interface NetworkCache extends Point {
  readonly id: string;
  readonly takeoffFactor: number;
  readonly landingFactor: number;
  readonly wetTakeoffFactor: number;
  readonly wetByDay: readonly boolean[];
  readonly closedByDay: readonly boolean[];
  readonly stockDrums: number;
  readonly minimumDrums: number;
  readonly criticalDrums: number;
  readonly capacityDrums: number;
  readonly endTargetDrums: number;
  readonly demandDrumsByDay: readonly number[];
}

const cents = (money: number) => Math.round(money * 100);

/** The network as a routing problem: bases first, then caches; levels in drums. */
export function problemOfNetwork(network: CachesNetwork): Problem {
  return {
    days: network.days,
    packSize: 1,
    stores: [
      ...network.bases.map((base) => baseStore(network, base)),
      ...network.caches.map((cache) => cacheStore(network, cache)),
    ],
    vehicles: network.aircraft.map((aircraft) => vehicle(network, aircraft)),
    routes: buildPool(poolRules(network)),
    booked: [],
    crews: [],
    standing: [],
    changePrice: 0,
  };
}

const free: StorePrices = { unmet: 0, belowMinimum: 0, belowCritical: 0, belowCushion: 0, belowEndTarget: 0 };

function baseStore(network: CachesNetwork, base: CachesNetwork['bases'][number]): Store {
  const none = new Array<number>(network.days).fill(0);
  const packsUntil = (day: number) =>
    base.resupplyDrumsByDay.slice(0, day + 1).reduce((sum, drums) => sum + drums, base.stockDrums);
  return {
    id: base.id,
    opening: 0,
    capacity: null,
    arrivals: none,
    losses: none,
    demand: none,
    floor: 0,
    minimum: 0,
    critical: 0,
    cushion: 0,
    endTarget: 0,
    packsPerDay: null,
    prices: free,
    supply: {
      packCost: 0,
      packsByDay: none.map((_, day) => Math.floor(packsUntil(day))),
      unitsByDay: null,
    },
  };
}

function cacheStore(network: CachesNetwork, cache: NetworkCache): Store {
  const none = new Array<number>(network.days).fill(0);
  const { penalties } = network;
  return {
    id: cache.id,
    opening: cache.stockDrums,
    capacity: new Array<number>(network.days).fill(cache.capacityDrums),
    arrivals: none,
    losses: none,
    demand: cache.demandDrumsByDay,
    floor: 0,
    minimum: cache.minimumDrums,
    critical: cache.criticalDrums,
    cushion: 0,
    endTarget: cache.endTargetDrums,
    packsPerDay: null,
    prices: {
      unmet: cents(penalties.unmetPerDrum),
      belowMinimum: cents(penalties.belowMinimumPerDrumDay),
      belowCritical: cents(penalties.belowCriticalPerDrumDay),
      belowCushion: 0,
      belowEndTarget: cents(penalties.belowEndTargetPerDrum),
    },
    supply: null,
  };
}

function vehicle(network: CachesNetwork, aircraft: CachesNetwork['aircraft'][number]): Vehicle {
  const { dailyBlockHours, dailyDutyHours, sevenDayDutyHours } = network.limits;
  return {
    id: aircraft.id,
    kind: aircraft.type,
    home: network.bases.findIndex((base) => base.id === aircraft.base),
    blockHours: aircraft.blockHoursByDay.map((hours) => Math.min(hours, dailyBlockHours)),
    dutyHours: aircraft.blockHoursByDay.map((hours) => (hours > 0 ? dailyDutyHours : 0)),
    rolling: { days: 7, dutyHours: sevenDayDutyHours },
  };
}

/** Small networks take every sequence of stops; in larger ones far-fetched rounds are left out. */
function poolRules(network: CachesNetwork): PoolRules {
  const places = [...network.bases, ...network.caches];
  const bases = network.bases.length;
  const cacheAt = (store: number) => network.caches[store - bases]!;
  const distance = (from: number, to: number) =>
    Math.hypot(places[from]!.xNm - places[to]!.xNm, places[from]!.yNm - places[to]!.yNm);
  const few = network.caches.length <= 25;
  const typeOf = new Map(network.types.map((type) => [type.id, type]));

  return {
    days: network.days,
    starts: startsOf(network),
    stops: network.caches.map((_, index) => bases + index),
    distance,
    conditionsKey: (_, stops, day) => {
      let key = 0;
      for (const stop of stops) {
        if (cacheAt(stop).closedByDay[day]) return null;
        key = key * 2 + (cacheAt(stop).wetByDay[day] ? 1 : 0);
      }
      return key;
    },
    conditionsOf: (start, stops, day) => {
      const path = [start.source, ...stops, start.source];
      const legs = path.slice(1).map((to, leg) => distance(path[leg]!, to));
      return flightConditions(network, typeOf.get(start.kind)!, legs, stops.map(cacheAt), day);
    },
    crewGroupOf: () => -1,
    maxStops: 3,
    neighbours: few ? network.caches.length : 8,
    detour: few ? 2 : 1.3,
  };
}

function startsOf(network: CachesNetwork): Start[] {
  const starts = new Map<string, Start>();
  for (const { type, base } of network.aircraft) {
    const source = network.bases.findIndex((one) => one.id === base);
    starts.set(`${type} ${source}`, { kind: type, source });
  }
  return [...starts.values()];
}

/** Block, duty, cost and drums per leg of a flight through the caches, `legs` in NM; null: it cannot be flown. */
function flightConditions(
  network: CachesNetwork,
  type: AeroplaneType,
  legs: readonly number[],
  caches: readonly NetworkCache[],
  day: number,
): RouteConditions | null {
  const { limits } = network;
  const hours = legs.map((nm) => nm / type.cruiseKt + limits.hoursAddedPerLeg);
  const legPacks: number[] = [];
  let fuel = limits.reserveHours * type.burnKgPerHour;
  for (let leg = legs.length - 1; leg >= 0; leg--) {
    const to = caches[leg];
    const landingRoom = type.maxLandingKg * (to?.landingFactor ?? 1) - type.operatingWeightKg - fuel;
    fuel += hours[leg]! * type.burnKgPerHour + (leg === 0 ? limits.taxiKg : limits.taxiKg / 2);
    const takeoffRoom =
      type.maxTakeoffKg * takeoffFactor(caches[leg - 1], day) - type.operatingWeightKg - fuel;
    if (leg === legs.length - 1) {
      if (takeoffRoom < 50 || landingRoom < 0) return null;
      continue;
    }
    const drums = Math.floor(Math.min(takeoffRoom, landingRoom) / network.drumGrossKg);
    legPacks.unshift(Math.max(0, Math.min(drums, type.drumPositions)));
  }
  const blockHours = Math.round(hours.reduce((sum, one) => sum + one, 0) * 1000) / 1000;
  return {
    blockHours,
    dutyHours: blockHours + limits.baseTurnHours + limits.stopTurnHours * caches.length,
    cost: cents(blockHours * type.costPerBlockHour + type.feePerStop * caches.length),
    legPacks,
    ownUse: 0,
  };
}

/** At a base (no cache) the whole take-off weight may be used. */
function takeoffFactor(cache: NetworkCache | undefined, day: number): number {
  if (!cache) return 1;
  return cache.takeoffFactor * (cache.wetByDay[day] ? cache.wetTakeoffFactor : 1);
}
