import { type LinearProgram, solveWithHighs, solveWithJsLpSolver } from '@drumline/routing/milp';
import { describe, expect, it } from 'vitest';
import { afiro } from './linear-programs/afiro.js';
import { kb2 } from './linear-programs/kb2.js';
import { programOf } from './linear-programs/named-program.js';

const engines = [
  ['HiGHS', solveWithHighs],
  ['javascript-lp-solver', solveWithJsLpSolver],
] as const;

/** Source: G. B. Dantzig, Linear Programming and Extensions (1963), ch. 3.3: cases from two plants to three markets. */
function transportation(): LinearProgram {
  const supply = [350, 600];
  const demand = [325, 300, 275];
  const thousandMiles = [
    [2.5, 1.7, 1.8],
    [2.5, 1.8, 1.4],
  ];
  return {
    rows: [
      ...supply.map((most) => ({ lower: Number.NEGATIVE_INFINITY, upper: most })),
      ...demand.map((least) => ({ lower: least, upper: Number.POSITIVE_INFINITY })),
    ],
    columns: thousandMiles.flatMap((distances, plant) =>
      distances.map((distance, market) => ({
        cost: (90 * distance) / 1000,
        lower: 0,
        upper: Number.POSITIVE_INFINITY,
        integer: false,
        rows: [plant, supply.length + market],
        coefficients: [1, 1],
      })),
    ),
  };
}

/** Source: knapsack set of J. Burkardt, problem P01; data and optimum from memory. */
function knapsack(): LinearProgram {
  const weights = [23, 31, 29, 44, 53, 38, 63, 85, 89, 82];
  const profits = [92, 57, 49, 68, 60, 43, 67, 84, 87, 72];
  return {
    rows: [{ lower: Number.NEGATIVE_INFINITY, upper: 165 }],
    columns: weights.map((weight, at) => ({
      cost: -profits[at]!,
      lower: 0,
      upper: 1,
      integer: true,
      rows: [0],
      coefficients: [weight],
    })),
  };
}

describe.each(engines)('published linear programs in %s', (_, solve) => {
  it('transportation (Dantzig 1963): 153.675 thousand dollars', async () => {
    const solution = await solve(transportation());
    expect(solution.status).toBe('optimal');
    if (solution.status !== 'optimal') return;
    expect(solution.objective).toBeCloseTo(153.675, 6);
    // The first market is as far from both plants: only its sum is fixed.
    const [toFirst, toSecond, , toFirstToo, , toThird] = solution.values;
    expect(toFirst! + toFirstToo!).toBeCloseTo(325, 6);
    expect(toSecond).toBeCloseTo(300, 6);
    expect(toThird).toBeCloseTo(275, 6);
  });

  it('knapsack P01: profit 309 with items 1, 2, 3, 4 and 6', async () => {
    const solution = await solve(knapsack());
    expect(solution.status).toBe('optimal');
    if (solution.status !== 'optimal') return;
    expect(solution.objective).toBeCloseTo(-309, 6);
    const taken = [...solution.values].flatMap((value, at) => (value > 0.5 ? [at + 1] : []));
    expect(taken).toEqual([1, 2, 3, 4, 6]);
  });

  // Source of the optima: readme of the netlib LP test set (D. M. Gay), 11 digits.
  it('afiro of the netlib set: -464.75314286', async () => {
    const solution = await solve(programOf(afiro));
    expect(solution).toMatchObject({ status: 'optimal', objective: expect.closeTo(-4.6475314286e2, 6) });
  });

  it('kb2 of the netlib set: -1749.9001299', async () => {
    const solution = await solve(programOf(kb2));
    expect(solution).toMatchObject({ status: 'optimal', objective: expect.closeTo(-1.7499001299e3, 5) });
  });
});

// Source: P-n16-k8 of P. Augerat et al. (1995); coordinates, demands and the optimum 450 with 8 vehicles from memory.
describe('vehicle routing P-n16-k8', () => {
  const depot = [30, 40] as const;
  const sites = [
    [37, 52],
    [49, 49],
    [52, 64],
    [31, 62],
    [52, 33],
    [42, 41],
    [52, 41],
    [57, 58],
    [62, 42],
    [42, 57],
    [27, 68],
    [43, 67],
    [58, 48],
    [58, 27],
    [37, 69],
  ] as const;
  const demands = [19, 30, 16, 23, 11, 31, 15, 28, 8, 8, 7, 14, 6, 19, 11];
  const capacity = 35;

  it('costs 450 with 8 vehicles', async () => {
    const solution = await solveWithHighs(partition(8));
    expect(solution).toMatchObject({ status: 'optimal', objective: expect.closeTo(450, 6) });
  });

  it('cannot be done with 7: the loads would not fit', async () => {
    expect(Math.ceil(demands.reduce((a, b) => a + b, 0) / capacity)).toBe(8);
    expect((await solveWithHighs(partition(7))).status).toBe('infeasible');
  });

  /** Every load that fits a vehicle, at the length of its shortest round; each site in one of them. */
  function partition(vehicles: number): LinearProgram {
    return {
      rows: [...sites.map(() => ({ lower: 1, upper: 1 })), { lower: vehicles, upper: vehicles }],
      columns: loads(0, []).map((load) => ({
        cost: shortestRound(load),
        lower: 0,
        upper: 1,
        integer: true,
        rows: [...load, sites.length],
        coefficients: [...load.map(() => 1), 1],
      })),
    };
  }

  function loads(from: number, load: readonly number[]): number[][] {
    const fits = load.reduce((sum, site) => sum + demands[site]!, 0) <= capacity;
    if (!fits) return [];
    const longer = sites.flatMap((_, site) => (site >= from ? loads(site + 1, [...load, site]) : []));
    return load.length > 0 ? [[...load], ...longer] : longer;
  }

  /** By trying every order: no load holds more than a few sites. */
  function shortestRound(load: readonly number[], at: readonly [number, number] = depot): number {
    if (load.length === 0) return distance(at, depot);
    const onward = load.map(
      (site) =>
        distance(at, sites[site]!) +
        shortestRound(
          load.filter((other) => other !== site),
          sites[site],
        ),
    );
    return Math.min(...onward);
  }

  /** EUC_2D: rounded to the nearest whole number. */
  function distance([x1, y1]: readonly [number, number], [x2, y2]: readonly [number, number]): number {
    return Math.round(Math.hypot(x1 - x2, y1 - y2));
  }
});
