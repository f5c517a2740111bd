import solverModule, { type Model, type SolveResult } from 'javascript-lp-solver';
import {
  brokenRule,
  type LinearProgram,
  type LinearSolution,
  objectiveOf,
  type SolveLimits,
} from './linear-program.js';

// The package's types describe its CommonJS build; the ES module exports the solver itself.
const solver = solverModule as unknown as typeof solverModule.default;

/**
 * Solves with javascript-lp-solver, for small continuous questions and as a cross-check. Its word is not taken for
 * granted: out of time it calls a fractional point feasible, so that whatever breaks a rule of the program
 * comes back as "no answer". It has no word for "out of time" either: under a time limit an integer model is
 * never called optimal or infeasible. `shouldStop`, `start` and the callbacks are not known to it.
 */
export async function solveWithJsLpSolver(
  program: LinearProgram,
  limits: SolveLimits = {},
): Promise<LinearSolution> {
  const { feasible, bounded, ...figures } = solver.Solve(modelOf(program, limits)) as SolveResult;
  const messages = solver.lastSolvedModel?.messages ?? [];
  const values = Float64Array.from(program.columns, (_, at) => Number(figures[name(at)] ?? 0));
  const complete =
    limits.timeLimitSeconds === undefined || program.columns.every((column) => !column.integer);
  return judged(program, values, { feasible, bounded: bounded !== false, complete, messages });
}

/** What the solver says of its own answer, and whether it can have run to the end. */
interface Claim {
  readonly feasible: boolean;
  readonly bounded: boolean;
  readonly complete: boolean;
  readonly messages: readonly unknown[];
}

/** An answer of the solver held against the program: nothing that breaks a rule gets through. */
export function judged(program: LinearProgram, values: Float64Array, claim: Claim): LinearSolution {
  if (claim.messages.length > 0) return noAnswer(String(claim.messages[0]));
  if (!claim.feasible)
    return claim.complete ? { status: 'infeasible' } : noAnswer('no whole-number solution in the time given');
  if (!claim.bounded) return { status: 'unbounded' };
  const broken = brokenRule(program, values);
  if (broken) return noAnswer(`called feasible, but ${broken}`);
  const objective = objectiveOf(program, values);
  return claim.complete
    ? { status: 'optimal', values, objective, duals: null, reducedCosts: null }
    : { status: 'feasible', values, objective, bound: Number.NEGATIVE_INFINITY };
}

const noAnswer = (why: string): LinearSolution => ({
  status: 'no answer',
  why,
  bound: Number.NEGATIVE_INFINITY,
});

const name = (column: number) => `x${column}`;

function modelOf({ columns, rows }: LinearProgram, limits: SolveLimits): Model {
  const constraints: Model['constraints'] = {};
  const variables: Model['variables'] = {};
  const ints: Record<string, 1> = {};
  const unrestricted: Record<string, 1> = {};
  rows.forEach((row, at) => {
    constraints[`row${at}`] = limitsOf(row.lower, row.upper);
  });
  columns.forEach((column, at) => {
    const terms: Record<string, number> = { cost: column.cost };
    column.rows.forEach((row, entry) => {
      terms[`row${row}`] = column.coefficients[entry];
    });
    if (column.integer) ints[name(at)] = 1;
    // Without a word the solver takes a lower bound of zero.
    if (column.lower < 0) unrestricted[name(at)] = 1;
    const lower = column.lower === 0 ? Number.NEGATIVE_INFINITY : column.lower;
    if (Number.isFinite(lower) || Number.isFinite(column.upper)) {
      constraints[`bounds${at}`] = limitsOf(lower, column.upper);
      terms[`bounds${at}`] = 1;
    }
    variables[name(at)] = terms;
  });
  return {
    optimize: 'cost',
    opType: 'min',
    constraints,
    variables,
    ints,
    unrestricted,
    // Its presolve forgets the cost of the columns it fixes.
    options: {
      presolve: false,
      ...(limits.timeLimitSeconds !== undefined && { timeout: limits.timeLimitSeconds * 1000 }),
    },
  };
}

function limitsOf(lower: number, upper: number) {
  if (lower === upper) return { equal: lower };
  return {
    ...(Number.isFinite(lower) && { min: lower }),
    ...(Number.isFinite(upper) && { max: upper }),
  };
}
