import { type BoundOptions, boundRelaxation, type RelaxationBound } from '../bound/lower-bound.js';
import { promisingRoutes } from '../bound/promising-patterns.js';
import { columnOf } from '../bound/relaxation.js';
import type { Problem } from '../problem.js';
import { openWithHighs } from './highs.js';
import type { LinearProgram } from './linear-program.js';

export interface LowerBoundOptions extends BoundOptions {
  /** Cost of a known plan (cents): routes that no cheaper plan can travel are left out of `routesKept`. */
  readonly upperBound?: number;
}

export interface LowerBound {
  /** No plan on the routes of the problem costs less (cents); -Infinity where it was stopped too early. */
  readonly bound: number;
  /** Another round would not raise the bound. */
  readonly converged: boolean;
  readonly rounds: number;
  /** Indices into `problem.routes`. */
  readonly routesKept: readonly number[];
  /** What `polish` needs to go on from here. */
  readonly known: RelaxationBound;
}

/**
 * The lower bound of a problem: the linear program over patterns with rounding cuts, by column generation in
 * HiGHS. Valid whenever it is stopped, for the routes in the problem's pool.
 */
export async function lowerBound(problem: Problem, options: LowerBoundOptions): Promise<LowerBound> {
  const known = await boundRelaxation(
    problem,
    (program) => openWithHighs(program, { simplex: 'primal', presolve: false }),
    options,
  );
  const { bound, converged, rounds } = known;
  const routesKept = promisingRoutes(known, options.upperBound ?? Number.POSITIVE_INFINITY);
  return { bound, converged, rounds, routesKept, known };
}

/** The last linear program of a bound, whole: for another engine to solve. */
export const programOfBound = ({ relaxation, patterns }: RelaxationBound): LinearProgram => ({
  rows: relaxation.program.rows,
  columns: [...relaxation.program.columns, ...patterns.map((pattern) => columnOf(relaxation, pattern))],
});
