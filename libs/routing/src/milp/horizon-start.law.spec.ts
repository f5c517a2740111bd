import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkPlan } from '../check-plan.js';
import type { Problem } from '../problem.js';
import { randomFrom } from '../random.js';
import { handRule } from '../solvers/hand-rule.js';
import { randomProblem, type Size } from '../testing/random-problem.js';
import { validate } from '../validate.js';
import { assignVehicles } from './assign-vehicles.js';
import { fullDrops, horizonStarts } from './horizon-start.js';
import { lowerBound } from './lower-bound.js';
import { placeByUrgency } from './place-by-urgency.js';
import { wholeHorizon } from './whole-horizon.js';

const small: Size = {
  days: 5,
  caches: 4,
  vehicles: 3,
  routes: 12,
  booked: 1,
  crews: 3,
  legPacks: 4,
  hoursPerDay: 6,
};

const plannable = fc
  .integer()
  .map((seed) => randomProblem(randomFrom(seed), small))
  .filter((problem) => validate(problem).length === 0);

describe('horizon start', () => {
  it('gives plans that pass the check, whatever the problem', async () => {
    await fc.assert(
      fc.asyncProperty(plannable, async (problem) => {
        const { known } = await lowerBound(wholeHorizon(problem), { clock: () => 0 });
        const plans = await horizonStarts(problem, known, { from: handRule(problem), mostNodes: 20 });
        for (const plan of plans) expect(checkPlan(problem, plan).faults).toEqual([]);
      }),
      { numRuns: 25 },
    );
  }, 60_000);

  it('fills the load to the last pack, a pack at least at every stop', () => {
    expect(fullDrops([3])).toEqual([[3]]);
    expect(fullDrops([3, 2])).toEqual([
      [1, 2],
      [2, 1],
    ]);
    expect(fullDrops([4, 1])).toEqual([[3, 1]]);
    expect(fullDrops([2, 2, 2])).toEqual([]);
  });
});

/** One vehicle flies one round a day, to either of two stores; the second one runs out sooner. */
const urgent: Problem = {
  days: 2,
  packSize: 1,
  stores: [store('base', 0, 0), store('late', 9, 4), store('soon', 3, 4)],
  vehicles: [vehicle('A')],
  routes: [route(1), route(2)],
  booked: [],
  crews: [],
  standing: [],
  changePrice: 0,
};

function store(id: string, opening: number, demand: number): Problem['stores'][number] {
  return {
    id,
    opening,
    capacity: null,
    arrivals: [0, 0],
    losses: [0, 0],
    demand: [demand, demand],
    floor: 0,
    minimum: 0,
    critical: 0,
    cushion: 0,
    endTarget: demand,
    packsPerDay: null,
    prices: { unmet: 100_000, belowMinimum: 0, belowCritical: 0, belowCushion: 0, belowEndTarget: 1000 },
    supply: id === 'base' ? { packCost: 0, packsByDay: [20, 20], unitsByDay: null } : null,
  };
}

function vehicle(id: string): Problem['vehicles'][number] {
  return { id, kind: 'K', home: 0, blockHours: [4, 4], dutyHours: [4, 4], rolling: null };
}

function route(stop: number): Problem['routes'][number] {
  const conditions = [{ blockHours: 3, dutyHours: 3, cost: 100, legPacks: [5], ownUse: 0 }];
  return { kind: 'K', source: 0, stops: [stop], end: 0, conditions, conditionByDay: [0, 0], crewGroup: -1 };
}

describe('place by urgency', () => {
  it('the store that runs out first gets the first day', () => {
    const { trips } = placeByUrgency(urgent, [
      { route: 0, drops: [5] },
      { route: 1, drops: [5] },
    ]);
    expect(trips.map(({ day, route }) => ({ day, route }))).toEqual([
      { day: 0, route: 1 },
      { day: 1, route: 0 },
    ]);
  });
});

describe('assign vehicles', () => {
  const fleet = { ...urgent, vehicles: [vehicle('A'), vehicle('B')] };
  const trip = { route: 0, day: 0 };

  it('one round each where a vehicle has the hours for one', () => {
    expect(assignVehicles(fleet, [trip, trip])?.toSorted()).toEqual([0, 1]);
  });

  it('none where hours are enough together but not for one vehicle', () => {
    const short = {
      ...fleet,
      vehicles: fleet.vehicles.map((one) => ({ ...one, dutyHours: [4.5, 4.5], blockHours: [4.5, 4.5] })),
    };
    expect(assignVehicles(short, [trip, trip, trip])).toBeNull();
  });

  it('a standing visit keeps its vehicle', () => {
    const standing = [{ vehicle: 1, day: 0, stops: [1] }];
    expect(assignVehicles({ ...fleet, standing }, [trip])).toEqual([1]);
  });
});
