import type { BookedRoute, Crew, Problem, Route, Store, Vehicle } from '../problem.js';
import { pick, type Random } from '../random.js';

export interface Size {
  readonly days: number;
  readonly caches: number;
  readonly vehicles: number;
  readonly routes: number;
  readonly booked: number;
  readonly crews: number;
  readonly legPacks: number;
  readonly hoursPerDay: number;
}

/** A small problem with every rule in it: limits by day, crews, booked routes, standing visits, own use, two sources. */
export function randomProblem(random: Random, size: Size): Problem {
  const { days, caches } = size;
  const upTo = (most: number) => pick(random, most + 1);
  const daily = (of: () => number) => Array.from({ length: days }, of);
  const sources = 1 + upTo(1);
  const packSize = 1 + upTo(2);
  const groups = 2;

  const route = (): Route => {
    const source = pick(random, sources);
    const stops = shuffled(
      random,
      Array.from({ length: caches }, (_, c) => sources + c),
    ).slice(0, 1 + upTo(2));
    const conditions = Array.from({ length: 2 }, () => {
      const blockHours = 1 + random() * 2;
      const legPacks = stops.map(() => 1 + upTo(size.legPacks - 1));
      const cost = Math.round(blockHours * 2000);
      return {
        blockHours,
        dutyHours: blockHours + 0.5 * stops.length,
        cost,
        legPacks,
        ownUse: random() < 0.3 ? 1 : 0,
      };
    });
    const conditionByDay = daily(() => upTo(2) - 1);
    return {
      kind: `K${upTo(1)}`,
      source,
      stops,
      end: source,
      conditions,
      conditionByDay,
      crewGroup: upTo(groups) - 1,
    };
  };
  const vehicle = (_: unknown, v: number): Vehicle => ({
    id: `V${v}`,
    kind: `K${v % 2}`,
    home: pick(random, sources),
    blockHours: daily(() => (random() < 0.1 ? 0 : size.hoursPerDay)),
    dutyHours: daily(() => size.hoursPerDay + 1),
    rolling: random() < 0.5 ? { days: 1 + upTo(days), dutyHours: size.hoursPerDay * 1.5 } : null,
  });
  const booked = (_: unknown, b: number): BookedRoute => {
    const { source, stops, conditions, crewGroup } = route();
    const { legPacks, blockHours, dutyHours } = conditions[0];
    return {
      id: `B${b}`,
      day: pick(random, days),
      source,
      stops,
      legPacks,
      blockHours,
      dutyHours,
      crewGroup,
    };
  };
  const crew = (_: unknown, c: number): Crew => ({
    id: `C${c}`,
    groupsByDay: Array.from({ length: days }, () =>
      c === 0 ? [0, 1] : random() < 0.2 ? [] : [upTo(groups - 1)],
    ),
    blockHours: daily(() => size.hoursPerDay),
    dutyHours: daily(() => size.hoursPerDay + 1),
    rolling:
      random() < 0.5
        ? { days: 3, blockHours: size.hoursPerDay * 1.5, flownBefore: [random(), random() * 2, random()] }
        : null,
  });

  const routes = Array.from({ length: size.routes }, route);
  const vehicles = Array.from({ length: size.vehicles }, vehicle);
  const standing = routes
    .filter(() => random() < 0.3)
    .map(({ stops }) => ({ vehicle: pick(random, vehicles.length), day: pick(random, days), stops }));
  return {
    days,
    packSize,
    stores: [
      ...Array.from({ length: sources }, (_, s) => sourceStore(random, s, days, packSize)),
      ...Array.from({ length: caches }, (_, c) => cacheStore(random, c, days, packSize)),
    ],
    vehicles,
    routes,
    booked: Array.from({ length: size.booked }, booked),
    crews: random() < 0.5 ? [] : Array.from({ length: size.crews }, crew),
    standing,
    changePrice: 700,
  };
}

function sourceStore(random: Random, s: number, days: number, packSize: number): Store {
  let packs = pick(random, 8);
  const packsByDay = Array.from({ length: days }, () => {
    packs += pick(random, 4);
    return packs;
  });
  return {
    ...cacheStore(random, s, days, packSize),
    id: `S${s}`,
    supply: {
      packCost: 100 + 20 * s,
      packsByDay,
      unitsByDay: random() < 0.5 ? null : packsByDay.map((ready) => ready * packSize * 0.9 + 2),
    },
  };
}

function cacheStore(random: Random, c: number, days: number, packSize: number): Store {
  const daily = (of: () => number) => Array.from({ length: days }, of);
  const minimum = packSize * (1 + random() * 2);
  return {
    id: `D${c}`,
    opening: random() * packSize * 5,
    capacity: random() < 0.3 ? null : daily(() => packSize * (4 + pick(random, 5))),
    arrivals: daily(() => (random() < 0.1 ? packSize : 0)),
    losses: daily(() => (random() < 0.1 ? packSize / 2 : 0)),
    demand: daily(() => random() * packSize * 1.5),
    floor: random() < 0.3 ? minimum / 4 : 0,
    minimum,
    critical: minimum / 2,
    cushion: random() < 0.5 ? minimum * 1.5 : 0,
    endTarget: minimum * 1.2,
    packsPerDay: random() < 0.3 ? daily(() => 1 + pick(random, 4)) : null,
    prices: { unmet: 1e6, belowMinimum: 2000, belowCritical: 20000, belowCushion: 50, belowEndTarget: 2500 },
    supply: null,
  };
}

function shuffled<T>(random: Random, items: T[]): T[] {
  return items
    .map((item) => ({ item, rank: random() }))
    .sort((a, b) => a.rank - b.rank)
    .map(({ item }) => item);
}
