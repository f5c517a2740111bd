import { describe, expect, it } from 'vitest';
import { checkPlan } from './check-plan.js';
import type { Plan, Trip } from './plan.js';
import type { Problem } from './problem.js';
import { plain } from './testing/plain-problem.js';

const trip: Trip = { vehicle: 0, day: 0, route: 0, drops: [2], crew: 0 };
const planOf = (...trips: Trip[]): Plan => ({ trips, bookedDrops: [[1]], bookedCrews: [0] });

/** What the check says of a plan, each as "where: what". */
const faultsOf = (plan: Plan, problem: Problem = plain) =>
  checkPlan(problem, plan).faults.map(({ where, what }) => `${where}: ${what}`);

const withNear = (change: object): Problem => ({
  ...plain,
  stores: plain.stores.map((store) => (store.id === 'near' ? { ...store, ...change } : store)),
});

describe('checkPlan', () => {
  it('finds nothing wrong with a plan that keeps every rule, and adds up its tiers', () => {
    const { faults, cost } = checkPlan(plain, planOf(trip));
    expect(faults).toEqual([]);
    // Near: 6 + 2 - 2 = 6, + 1 - 2 = 5, - 2 = 3: one short of the end target. Far: 4, 2, 0.
    expect(cost).toEqual({
      travel: 3000,
      packs: 300,
      changes: 0,
      endShort: 2000 * (1 + 4),
      belowCushion: 0,
      belowMinimum: 1000 * (1 + 3),
      belowCritical: 10_000,
      unmet: 0,
      total: 27_300,
    });
  });

  it('charges a standing visit that no trip keeps', () => {
    expect(checkPlan(plain, planOf()).cost.changes).toBe(500);
    expect(checkPlan(plain, planOf({ ...trip, day: 1 })).cost.changes).toBe(500);
  });

  it.each<[string, Trip]>([
    ['route 9 does not exist', { ...trip, route: 9 }],
    ['vehicle 3 does not exist', { ...trip, vehicle: 3 }],
    ['the route cannot be travelled that day', { ...trip, day: 2 }],
    ['2 drops for 1 stops', { ...trip, drops: [1, 1] }],
    ['drop of -1 packs at stop 0', { ...trip, drops: [-1] }],
    ['drop of 0.5 packs at stop 0', { ...trip, drops: [0.5] }],
    ['6 packs aboard on leg 0, which takes 5', { ...trip, drops: [6] }],
    ['3 packs aboard on leg 1, which takes 2', { ...trip, route: 2, drops: [0, 3] }],
    ['nobody goes with it', { ...trip, crew: -1 }],
  ])('a trip alone: %s', (what, broken) => {
    expect(faultsOf(planOf(broken)).filter((fault) => fault.endsWith(what))).toHaveLength(1);
  });

  it('a vehicle travels the routes of its kind from its home', () => {
    const [vehicle] = plain.vehicles;
    const otherKind = { ...plain, vehicles: [{ ...vehicle, kind: 'L' }] };
    const elsewhere = { ...plain, vehicles: [{ ...vehicle, home: 1 }] };
    expect(faultsOf(planOf(trip), otherKind)[0]).toContain('the route is for kind K, the vehicle is a L');
    expect(faultsOf(planOf(trip), elsewhere)[0]).toContain("the vehicle's home");
  });

  it('deliveries must fit the capacity of the day, and what the place can take off', () => {
    expect(faultsOf(planOf(trip), withNear({ capacity: [7, 7, 7] }))).toEqual([
      'store near, day 0: 8 stock units after deliveries, room for 7',
    ]);
    expect(faultsOf(planOf(trip), withNear({ packsPerDay: [1, 1, 1] }))).toEqual([
      'store near, day 0: 2 packs set down, at most 1 a day',
    ]);
  });

  it('a store that is over its capacity without a delivery is no fault of the plan', () => {
    expect(faultsOf(planOf(), withNear({ opening: 30, capacity: [9, 99, 9] }))).toEqual([]);
  });

  it('packs and own use come out of the supply up to each day, booked routes included', () => {
    const supply = (packsByDay: number[], unitsByDay: number[]): Problem => ({
      ...plain,
      stores: plain.stores.map((store) =>
        store.supply ? { ...store, supply: { packCost: 100, packsByDay, unitsByDay } } : store,
      ),
    });
    expect(faultsOf(planOf(trip), supply([2, 2, 3], [9, 9, 9]))).toEqual([
      'source base, day 1: 3 packs taken, 2 ready',
    ]);
    expect(faultsOf(planOf(trip), supply([9, 9, 9], [2, 4, 4]))).toEqual([
      'source base, day 0: 3 stock units taken with own use, 2 there',
    ]);
  });

  it('a vehicle keeps to its hours of the day and of any run of days', () => {
    const [vehicle] = plain.vehicles;
    const short = { ...plain, vehicles: [{ ...vehicle, blockHours: [1, 1, 1] }] };
    expect(faultsOf(planOf(trip), short)).toEqual(['vehicle A, day 0: 2 block hours, 1 available']);
    const rolling = { ...plain, vehicles: [{ ...vehicle, rolling: { days: 2, dutyHours: 5 } }], crews: [] };
    expect(faultsOf(planOf(trip, { ...trip, day: 1 }), rolling)).toEqual([
      'vehicle A, days 0 to 1: 6 duty hours in 2 days, at most 5',
    ]);
  });

  it('a crew keeps to its groups, its hours of the day, and its rolling hours with those flown before', () => {
    const [crew] = plain.crews;
    expect(faultsOf(planOf(trip), { ...plain, crews: [{ ...crew, groupsByDay: [[], [0], [0]] }] })).toEqual([
      'trip 0 (vehicle A, day 0, route 0): crew P may not serve group 0 on day 0',
    ]);
    const rolling = { days: 3, blockHours: 7.5, flownBefore: [5, 1] };
    expect(faultsOf(planOf(trip), { ...plain, crews: [{ ...crew, rolling }] })).toEqual([
      'crew P, days -2 to 0: 8 block hours in 3 days, at most 7.5',
    ]);
  });
});
