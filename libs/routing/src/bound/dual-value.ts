import type { LinearProgram } from '../milp/linear-program.js';

/** The duals with signs that a minimum allows: none pushes against a bound that is not there. Changed in place. */
export function withAllowedSigns({ rows }: LinearProgram, duals: Float64Array): Float64Array {
  rows.forEach(({ lower, upper }, row) => {
    if (duals[row] > 0 && lower === Number.NEGATIVE_INFINITY) duals[row] = 0;
    if (duals[row] < 0 && upper === Number.POSITIVE_INFINITY) duals[row] = 0;
  });
  return duals;
}

/**
 * The Lagrangian value of the duals over the columns of the program: no solution of those columns costs less,
 * whatever the duals. Every column needs finite bounds.
 */
export function dualValue({ rows, columns }: LinearProgram, duals: Float64Array): number {
  let value = 0;
  rows.forEach(({ lower, upper }, row) => {
    const dual = duals[row];
    if (dual !== 0) value += dual * (dual > 0 ? lower : upper);
  });
  for (const { cost, lower, upper, rows: entries, coefficients } of columns) {
    let reducedCost = cost;
    for (let at = 0; at < entries.length; at++) reducedCost -= duals[entries[at]] * coefficients[at];
    value += reducedCost * (reducedCost > 0 ? lower : upper);
  }
  return value;
}
