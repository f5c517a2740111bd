import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { highsOpenMethods, proveOpenRoutes, solveWithHighs } from '../milp/index.js';
import { randomFrom } from '../random.js';
import { bruteForceOpen } from '../testing/brute-force-open.js';
import { randomOpenProblem } from '../testing/random-open-problem.js';
import { adjustQuantities } from './adjust-quantities.js';
import { checkOpenPlan } from './check-open-plan.js';
import type { OpenPlan, OpenProblem } from './open-problem.js';
import { searchOpen } from './search-open.js';
import { shortestRounds } from './shortest-rounds.js';
import { solveOpen } from './solve-open.js';
import { whyNoOpenPlan } from './why-no-open-plan.js';

const clock = () => 0;

/** Two sites ten units from the base and from each other; each draws 2 a day, the base makes 4. */
const pair: OpenProblem = {
  days: 2,
  fleet: { vehicles: 1, capacity: 6 },
  base: { opening: 4, production: [4, 4], holdingCost: 1 },
  sites: [
    { id: 'near', opening: 2, demand: [2, 2], minimum: 0, maximum: 4, holdingCost: 3 },
    { id: 'far', opening: 0, demand: [2, 2], minimum: 0, maximum: 4, holdingCost: 2 },
  ],
  travelCost: [
    [0, 1000, 2000],
    [1000, 0, 1500],
    [2000, 1500, 0],
  ],
};

const plan = (...routes: [day: number, ...stops: [site: number, quantity: number][]][]): OpenPlan => ({
  routes: routes.map(([day, ...stops]) => ({
    day,
    stops: stops.map(([site, quantity]) => ({ site, quantity })),
  })),
});

const faultsOf = (problem: OpenProblem, given: OpenPlan) =>
  checkOpenPlan(problem, given).faults.map(({ where, what }) => `${where}: ${what}`);

describe('check of an open plan', () => {
  it('order of a day: deliver, draw and produce, then pay for what is left', () => {
    const { faults, cost } = checkOpenPlan(pair, plan([0, [0, 2], [1, 2]], [1, [1, 2]]));
    expect(faults).toEqual([]);
    // near ends at 2 and 0, far at 0 and 0, the base at 4 - 4 + 4 and 4 - 2 + 4.
    expect(cost.holding).toBe(2 * 3 + (4 + 6) * 1);
    expect(cost.travel).toBe(1000 + 1500 + 2000 + 4000);
  });

  it('what the base makes on a day cannot be loaded that day', () => {
    expect(faultsOf(pair, plan([0, [0, 2], [1, 4]]))).toEqual([
      'base on day 0: 2 units more loaded than there are',
    ]);
  });

  it('says every broken rule', () => {
    expect(faultsOf(pair, plan())).toEqual([
      'near on day 1: -2 units at the end of the day, the minimum is 0',
      'far on day 0: -2 units at the end of the day, the minimum is 0',
      'far on day 1: -4 units at the end of the day, the minimum is 0',
    ]);
    expect(faultsOf(pair, plan([0, [1, 2]], [0, [1, 2]], [1, [0, 2]]))).toEqual([
      'far on day 0: visited more than once on the day',
      'day 0: 2 routes, 1 vehicles with one route each',
    ]);
    expect(faultsOf({ ...pair, base: { ...pair.base, opening: 9 } }, plan([0, [0, 3], [1, 4]]))).toEqual([
      'route 0 on day 0: 7 units aboard, a vehicle carries 6',
      'near on day 0: 5 units after delivery, at most 4 fit',
    ]);
  });
});

describe('no open plan', () => {
  it('a site that draws more than a vehicle carries runs out, whatever is done', () => {
    const problem = { ...pair, fleet: { vehicles: 9, capacity: 1 } };
    expect(whyNoOpenPlan(problem)).toEqual([
      expect.stringContaining('far: even with a full vehicle of 1 units every day'),
    ]);
  });

  it('a fleet or a base too small for all sites together is said', () => {
    const slow = {
      ...pair,
      fleet: { vehicles: 1, capacity: 2 },
      sites: [{ ...pair.sites[0], opening: 0 }, pair.sites[1]],
    };
    expect(whyNoOpenPlan(slow)).toEqual([
      'by day 0 the sites must get 4 units, the fleet can have carried 2',
    ]);
    const empty = { ...pair, base: { ...pair.base, opening: 1 } };
    expect(whyNoOpenPlan(empty)).toEqual(['by day 0 the sites must get 2 units, the base has had 1']);
  });

  it('what the quick reasons do not see, the proof says', async () => {
    // Three sites that each need 2 by the first day do not divide into two vehicles of 3.
    const sites = ['a', 'b', 'c'].map((id) => ({ ...pair.sites[1], id, demand: [2, 0], opening: 0 }));
    const problem: OpenProblem = {
      ...pair,
      fleet: { vehicles: 2, capacity: 3 },
      base: { ...pair.base, opening: 20 },
      sites,
      travelCost: [0, 1, 2, 3].map((from) => [0, 1, 2, 3].map((to) => Math.abs(from - to) * 100)),
    };
    expect(whyNoOpenPlan(problem)).toEqual([]);
    const outcome = await solveOpen(problem, {
      seed: 1,
      budget: { iterations: 200 },
      clock,
      ...highsOpenMethods(problem),
    });
    expect(outcome.status).toBe('infeasible');
  });
});

// Many small solves: slow on a busy machine, never a matter of time.
describe('open routes', () => {
  const tiny = fc
    .integer()
    .map((seed) => randomOpenProblem(randomFrom(seed), { sites: 2, days: 2, demand: 2, vehicles: 2 }));

  it('the solver finds the cheapest of all plans of a tiny problem and proves it, or that there is none', async () => {
    await fc.assert(
      fc.asyncProperty(tiny, async (problem) => {
        const cheapest = bruteForceOpen(problem);
        const outcome = await solveOpen(problem, {
          seed: 1,
          budget: { iterations: 60 },
          clock,
          ...highsOpenMethods(problem),
        });
        if (outcome.status === 'solved') {
          expect(outcome.cost.total).toBe(cheapest);
          expect(outcome.bound).toBeCloseTo(cheapest, 3);
        } else {
          expect(outcome.status).toBe('infeasible');
          expect(cheapest).toBe(Number.POSITIVE_INFINITY);
        }
      }),
      { numRuns: 60 },
    );
  }, 120_000);

  it('the proof needs no plan to start from', async () => {
    await fc.assert(
      fc.asyncProperty(tiny, async (problem) => {
        const { plan, bound } = await proveOpenRoutes(problem, Number.POSITIVE_INFINITY, { clock });
        expect(plan ? checkOpenPlan(problem, plan).cost.total : bound).toBe(bruteForceOpen(problem));
      }),
      { numRuns: 30 },
    );
  }, 120_000);

  it('every plan of the search passes the check and costs what it says, and is no better than the proof', async () => {
    const small = fc
      .integer()
      .map((seed) => randomOpenProblem(randomFrom(seed), { sites: 4, days: 3, demand: 9, vehicles: 3 }));
    await fc.assert(
      fc.asyncProperty(small, async (problem) => {
        const found = await searchOpen(problem, {
          seed: 1,
          budget: { iterations: 160 },
          clock,
          linear: solveWithHighs,
        });
        if (!found.plan) return;
        const { faults, cost } = checkOpenPlan(problem, found.plan);
        expect(faults).toEqual([]);
        expect(cost.total).toBeCloseTo(found.cost, 6);
        const { plan, complete } = await proveOpenRoutes(problem, found.cost, { clock });
        expect(complete).toBe(true);
        if (plan) expect(checkOpenPlan(problem, plan).faults).toEqual([]);
      }),
      { numRuns: 20 },
    );
  }, 120_000);

  it('the same seed and iterations give the same plan', async () => {
    const problem = randomOpenProblem(randomFrom(5), { sites: 8, days: 4, demand: 9, vehicles: 3 });
    const run = () =>
      searchOpen(problem, { seed: 3, budget: { iterations: 400 }, clock, linear: solveWithHighs });
    expect(await run()).toEqual(await run());
  });

  it('a search told to stop ends with its best plan', async () => {
    const found = await searchOpen(pair, { seed: 1, budget: { seconds: 1 }, clock, shouldStop: () => true });
    expect(found.iterations).toBe(0);
    expect(checkOpenPlan(pair, found.plan!).faults).toEqual([]);
  });
});

describe('quantities for given routes', () => {
  it('stock waits where it is cheapest', async () => {
    // near pays 3 a unit and day, the base 1: what is not needed before the second day comes on the second day.
    const given = plan([0, [0, 2], [1, 2]], [1, [0, 0], [1, 2]]);
    const problem = {
      ...pair,
      travelCost: [
        [0, 9, 9],
        [9, 0, 1],
        [9, 1, 0],
      ],
    };
    const adjusted = await adjustQuantities(problem, given, solveWithHighs);
    expect(adjusted).toEqual(plan([0, [1, 2]], [1, [0, 2], [1, 2]]));
  });
});

describe('shortest rounds', () => {
  it('no order of the stops is shorter', () => {
    fc.assert(
      fc.property(fc.integer(), (seed) => {
        const problem = randomOpenProblem(randomFrom(seed), { sites: 4, days: 1, demand: 2, vehicles: 1 });
        const lengthOf = (stops: readonly number[]) =>
          [...stops, -1].reduce(
            ({ at, sum }, site) => ({ at: site + 1, sum: sum + problem.travelCost[at][site + 1] }),
            { at: 0, sum: 0 },
          ).sum;
        for (const { set, stops, cost } of shortestRounds(problem)) {
          expect(stops.reduce((bits, site) => bits | (1 << site), 0)).toBe(set);
          expect(lengthOf(stops)).toBe(cost);
          expect(Math.min(...orders(stops).map(lengthOf))).toBe(cost);
        }
      }),
      { numRuns: 30 },
    );
  });
});

const orders = (stops: readonly number[]): number[][] =>
  stops.length === 0
    ? [[]]
    : stops.flatMap((stop) => orders(stops.filter((one) => one !== stop)).map((rest) => [stop, ...rest]));
