import { type BoundOptions, boundRelaxation, type RelaxationBound } from '../bound/lower-bound.js';
import type { Problem } from '../problem.js';
import { openWithHighs } from './highs.js';

/** The lower bound of the relaxation by column generation in HiGHS. Bounds hold for the routes in the problem. */
export function relaxationBound(problem: Problem, options: BoundOptions): Promise<RelaxationBound> {
  return boundRelaxation(
    problem,
    (program) => openWithHighs(program, { simplex: 'primal', presolve: false }),
    options,
  );
}
