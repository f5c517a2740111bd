import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pick, randomFrom } from '../random.js';
import { solveWithHighs } from './highs.js';
import { judged, solveWithJsLpSolver } from './js-lp-solver.js';
import { brokenRule, type Column, type LinearProgram, objectiveOf } from './linear-program.js';

const column = (
  cost: number,
  rows: number[],
  coefficients: number[],
  limits: Partial<Column> = {},
): Column => ({
  cost,
  lower: 0,
  upper: Number.POSITIVE_INFINITY,
  integer: false,
  rows,
  coefficients,
  ...limits,
});

/** Two drums of one kind or three of another fill 7: worth 5 and 4 each. */
const loading: LinearProgram = {
  columns: [column(-5, [0], [3], { integer: true }), column(-4, [0], [2], { integer: true })],
  rows: [{ lower: Number.NEGATIVE_INFINITY, upper: 7 }],
};

const engines = [
  ['HiGHS', solveWithHighs],
  ['javascript-lp-solver', solveWithJsLpSolver],
] as const;

describe.each(engines)('%s', (_, solve) => {
  it('finds the whole-number optimum where the continuous one is not whole', async () => {
    const solution = await solve(loading);
    expect(solution).toMatchObject({ status: 'optimal', objective: -13 });
  });

  it('says infeasible where no values keep the rows', async () => {
    const solution = await solve({
      columns: [column(1, [0, 1], [1, 1])],
      rows: [
        { lower: 2, upper: Number.POSITIVE_INFINITY },
        { lower: Number.NEGATIVE_INFINITY, upper: 1 },
      ],
    });
    expect(solution.status).toBe('infeasible');
  });

  it('says unbounded where the cost can fall for ever', async () => {
    const solution = await solve({
      columns: [column(-1, [0], [1])],
      rows: [{ lower: 1, upper: Number.POSITIVE_INFINITY }],
    });
    expect(solution.status).toBe('unbounded');
  });

  it('keeps lower and upper bounds of columns, negative ones too', async () => {
    const solution = await solve({
      columns: [column(1, [0], [1], { lower: -4, upper: 9 }), column(-1, [0], [1], { lower: 2, upper: 3 })],
      rows: [{ lower: -100, upper: 100 }],
    });
    expect(solution).toMatchObject({ status: 'optimal', objective: -7 });
  });
});

describe('HiGHS', () => {
  it('gives duals: what one more unit of a row would be worth', async () => {
    const solution = await solveWithHighs({
      columns: [column(2, [0], [1]), column(3, [0], [1])],
      rows: [{ lower: 4, upper: Number.POSITIVE_INFINITY }],
    });
    expect(solution).toMatchObject({ status: 'optimal', objective: 8 });
    if (solution.status !== 'optimal') return;
    expect([...solution.duals!]).toEqual([2]);
    expect([...solution.reducedCosts!]).toEqual([0, 1]);
  });

  it('takes a start, tells of better solutions, and ends when asked to', async () => {
    const heard: number[] = [];
    const solution = await solveWithHighs(loading, {
      start: { columns: [0, 1], values: [1, 1] },
      onImproved: (_, objective) => heard.push(objective),
    });
    expect(solution).toMatchObject({ status: 'optimal', objective: -13 });
    expect(heard.at(-1)).toBe(-13);
    const stopped = await solveWithHighs(marketSplit(6, 40), { shouldStop: () => true });
    expect(['feasible', 'no answer']).toContain(stopped.status);
  });
});

describe('javascript-lp-solver', () => {
  it('is not believed when it calls a fractional point feasible', () => {
    const claim = { feasible: true, bounded: true, complete: false, messages: [] };
    const solution = judged(loading, Float64Array.of(7 / 3, 0), claim);
    expect(solution).toMatchObject({ status: 'no answer' });
    expect(solution).toHaveProperty('why', expect.stringContaining('not a whole number'));
  });

  it('is not believed when its point breaks a row', () => {
    const claim = { feasible: true, bounded: true, complete: true, messages: [] };
    expect(judged(loading, Float64Array.of(2, 1), claim).status).toBe('no answer');
  });

  it('has no answer where its time runs out on 65 integers, though it says feasible', async () => {
    const solution = await solveWithJsLpSolver(marketSplit(4, 65), { timeLimitSeconds: 0.05 });
    expect(solution.status).toBe('no answer');
  });
});

/** Rows that must split exactly in half: easy to relax, very hard in whole numbers (Cornuejols and Dawande 1998). */
function marketSplit(rows: number, columns: number): LinearProgram {
  const random = randomFrom(7);
  const shares = Array.from({ length: columns }, () => Array.from({ length: rows }, () => pick(random, 100)));
  const half = (row: number) => Math.floor(shares.reduce((sum, share) => sum + share[row], 0) / 2);
  return {
    columns: shares.map((share) =>
      column(pick(random, 100), [...share.keys()], share, { upper: 1, integer: true }),
    ),
    rows: Array.from({ length: rows }, (_, row) => ({ lower: half(row), upper: half(row) })),
  };
}

describe('brokenRule', () => {
  it('names the column or row that is broken, and passes what keeps every rule', () => {
    expect(brokenRule(loading, [1, 2])).toBeNull();
    expect(brokenRule(loading, [-1, 0])).toContain('column 0');
    expect(brokenRule(loading, [0.5, 0])).toContain('not a whole number');
    expect(brokenRule(loading, [2, 1])).toContain('row 0');
  });
});

describe('two engines', () => {
  it('agree on random small continuous programs', async () => {
    await fc.assert(
      fc.asyncProperty(continuousPrograms, async (program) => {
        const highs = await solveWithHighs(program);
        const other = await solveWithJsLpSolver(program);
        if (other.status === 'no answer') return;
        expect(other.status).toBe(highs.status);
        if (highs.status !== 'optimal' || other.status !== 'optimal') return;
        expect(Math.abs(highs.objective - other.objective)).toBeLessThanOrEqual(1e-3);
        expect(brokenRule(program, highs.values)).toBeNull();
        expect(objectiveOf(program, highs.values)).toBeCloseTo(highs.objective, 6);
      }),
      { numRuns: 100 },
    );
  }, 60_000);
});

const figure = fc.integer({ min: -9, max: 9 });

const continuousPrograms: fc.Arbitrary<LinearProgram> = fc
  .record({ rows: fc.integer({ min: 1, max: 4 }), columns: fc.integer({ min: 1, max: 5 }) })
  .chain(({ rows, columns }) =>
    fc.record({
      columns: fc.array(
        fc
          .record({
            cost: figure,
            upper: fc.integer({ min: 1, max: 20 }),
            entries: fc.array(figure, { minLength: rows, maxLength: rows }),
          })
          .map(({ cost, upper, entries }) => column(cost, [...entries.keys()], entries, { upper })),
        { minLength: columns, maxLength: columns },
      ),
      rows: fc.array(
        fc
          .record({ at: fc.integer({ min: -20, max: 20 }), kind: fc.constantFrom('least', 'most', 'range') })
          .map(({ at, kind }) => ({
            lower: kind === 'most' ? Number.NEGATIVE_INFINITY : at,
            upper: kind === 'least' ? Number.POSITIVE_INFINITY : at + 12,
          })),
        { minLength: rows, maxLength: rows },
      ),
    }),
  );
