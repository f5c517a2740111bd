/**
 * Linear programs in no solver's terms: minimise cost x over lower <= x <= upper and, for every row,
 * row lower <= sum of coefficients x <= row upper. Columns are sparse. To maximise, negate the costs.
 */
export interface LinearProgram {
  readonly columns: readonly Column[];
  readonly rows: readonly RowBounds[];
}

export interface Column {
  readonly cost: number;
  /** Finite or -Infinity. */
  readonly lower: number;
  /** Finite or Infinity. */
  readonly upper: number;
  readonly integer: boolean;
  /** Rows with a coefficient, each once, and the coefficients beside them. */
  readonly rows: readonly number[];
  readonly coefficients: readonly number[];
}

export interface RowBounds {
  readonly lower: number;
  readonly upper: number;
}

export interface SolveLimits {
  /** Wall time; without it the solver ends on its own. */
  readonly timeLimitSeconds?: number;
  /** Most nodes of an integer model's search tree: a limit that ends alike every time. */
  readonly mostNodes?: number;
  /** Ends an integer model this close (share) to its bound; what it gives then is feasible, not optimal. */
  readonly relativeGap?: number;
  /** Asked now and then; true ends the run with what is known. */
  readonly shouldStop?: () => boolean;
  /** Values of some columns to start an integer model from; ignored where they cannot be completed. */
  readonly start?: { readonly columns: readonly number[]; readonly values: readonly number[] };
  /** Told of each better solution of an integer model. */
  readonly onImproved?: (values: Float64Array, objective: number) => void;
  /** Told now and then of the best proven bound of an integer model. */
  readonly onBound?: (bound: number) => void;
}

/** What a solver found. A figure is given only where it is proven; anything else is "no answer". */
export type LinearSolution =
  | {
      readonly status: 'optimal';
      readonly values: Float64Array;
      readonly objective: number;
      /** Change of the objective per unit of a row's bound; null with integers, or where the engine has none. */
      readonly duals: Float64Array | null;
      readonly reducedCosts: Float64Array | null;
    }
  | {
      readonly status: 'feasible';
      readonly values: Float64Array;
      readonly objective: number;
      /** No solution is cheaper than this. */
      readonly bound: number;
    }
  | { readonly status: 'infeasible' }
  | { readonly status: 'unbounded' }
  | { readonly status: 'no answer'; readonly why: string; readonly bound: number };

export type SolveLinearProgram = (program: LinearProgram, limits?: SolveLimits) => Promise<LinearSolution>;

/** A program kept in the solver, so that more columns or rows cost a warm start only. */
export interface OpenProgram {
  addColumns(columns: readonly Column[]): void;
  /** Adds rows over the columns that exist. */
  addRows(
    rows: readonly (RowBounds & {
      readonly columns: readonly number[];
      readonly coefficients: readonly number[];
    })[],
  ): void;
  removeColumns(indices: readonly number[]): void;
  solve(limits?: SolveLimits): LinearSolution;
  close(): void;
}

/** The objective of given values. */
export function objectiveOf(program: LinearProgram, values: ArrayLike<number>): number {
  return program.columns.reduce((sum, column, at) => sum + column.cost * values[at], 0);
}

/**
 * The first rule of the program that the values break, in words; null when they keep all of them.
 * `tolerance` is absolute, widened by the size of a row's own terms.
 */
export function brokenRule(
  program: LinearProgram,
  values: ArrayLike<number>,
  tolerance = 1e-6,
): string | null {
  const activity = new Float64Array(program.rows.length);
  const size = new Float64Array(program.rows.length).fill(1);
  for (const [at, column] of program.columns.entries()) {
    const value = values[at];
    const within = tolerance * Math.max(1, Math.abs(value));
    if (!(value >= column.lower - within && value <= column.upper + within))
      return `column ${at} is ${value}, outside ${column.lower} to ${column.upper}`;
    if (column.integer && Math.abs(value - Math.round(value)) > tolerance)
      return `column ${at} is ${value}, not a whole number`;
    column.rows.forEach((row, entry) => {
      const term = column.coefficients[entry] * value;
      activity[row] += term;
      size[row] = Math.max(size[row], Math.abs(term));
    });
  }
  const row = program.rows.findIndex(
    ({ lower, upper }, at) =>
      activity[at] < lower - tolerance * size[at] || activity[at] > upper + tolerance * size[at],
  );
  if (row < 0) return null;
  const { lower, upper } = program.rows[row];
  return `row ${row} is ${activity[row]}, outside ${lower} to ${upper}`;
}
