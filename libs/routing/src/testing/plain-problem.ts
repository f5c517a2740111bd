import type { Problem, Store } from '../problem.js';

const days = 3;
const daily = <T>(value: T): T[] => new Array<T>(days).fill(value);

/** A cache that uses 2 a day, holds 10 and should keep 3; prices in cents a unit. */
export const cache: Store = {
  id: 'cache',
  opening: 6,
  capacity: daily(10),
  arrivals: daily(0),
  losses: daily(0),
  demand: daily(2),
  floor: 0,
  minimum: 3,
  critical: 1,
  cushion: 0,
  endTarget: 4,
  packsPerDay: null,
  prices: {
    unmet: 1_000_000,
    belowMinimum: 1000,
    belowCritical: 10_000,
    belowCushion: 10,
    belowEndTarget: 2000,
  },
  supply: null,
};

export const base: Store = {
  ...cache,
  id: 'base',
  opening: 0,
  capacity: null,
  demand: daily(0),
  minimum: 0,
  critical: 0,
  endTarget: 0,
  supply: { packCost: 100, packsByDay: daily(6), unitsByDay: daily(20) },
};

/** One base, two caches, one aeroplane, one round to each cache and one to both; packs of one unit. */
export const plain: Problem = {
  days,
  packSize: 1,
  stores: [base, { ...cache, id: 'near' }, { ...cache, id: 'far' }],
  vehicles: [
    {
      id: 'A',
      kind: 'K',
      home: 0,
      blockHours: daily(8),
      dutyHours: daily(10),
      rolling: { days: 2, dutyHours: 12 },
    },
  ],
  routes: [
    { stops: [1], legPacks: [5] },
    { stops: [2], legPacks: [4] },
    { stops: [1, 2], legPacks: [4, 2] },
  ].map(({ stops, legPacks }) => ({
    kind: 'K',
    source: 0,
    stops,
    end: 0,
    conditions: [{ blockHours: 2, dutyHours: 3, cost: 3000, legPacks, ownUse: 1 }],
    conditionByDay: [0, 0, -1],
    crewGroup: 0,
  })),
  booked: [
    { id: 'mail', day: 1, source: 0, stops: [1], legPacks: [2], blockHours: 1, dutyHours: 2, crewGroup: 0 },
  ],
  crews: [
    {
      id: 'P',
      groupsByDay: daily([0]),
      blockHours: daily(4),
      dutyHours: daily(8),
      rolling: { days: 3, blockHours: 9, flownBefore: [5, 1] },
    },
  ],
  standing: [{ vehicle: 0, day: 0, stops: [1] }],
  changePrice: 500,
};
