import type { LinearProgram, OpenProgram } from '../milp/linear-program.js';
import type { Problem } from '../problem.js';
import { dualValue, withAllowedSigns } from './dual-value.js';
import { firstPatterns, guessedDuals, priceRoutes } from './price-routes.js';
import { Pricing } from './pricing.js';
import { columnOf, type Pattern, type Relaxation, relaxationOf } from './relaxation.js';
import { spreadDuals } from './spread-duals.js';

export interface BoundOptions {
  /** The bound of the problem with all its days as one (`wholeHorizon`), where it is known: to begin from. */
  readonly inAll?: RelaxationBound;
  /** Milliseconds from any moment; only differences count. */
  readonly clock: () => number;
  readonly shouldStop?: () => boolean;
  readonly onProgress?: (progress: BoundProgress) => void;
  readonly timeLimitSeconds?: number;
  readonly withCuts?: boolean;
}

export interface BoundProgress {
  readonly round: number;
  /** Cents. */
  readonly bound: number;
  /** Value of the linear program so far (cents): the bound cannot rise above it. */
  readonly reach: number;
  readonly columns: number;
}

export interface RelaxationBound {
  /** No plan on the routes of the problem costs less (cents). */
  readonly bound: number;
  /** The bound is the value of the relaxation: another round would not raise it. */
  readonly converged: boolean;
  readonly rounds: number;
  readonly relaxation: Relaxation;
  readonly pricing: Pricing;
  /** Duals of the relaxation's rows at which the bound was found. */
  readonly duals: Float64Array;
  /** Patterns that the linear program has come to know, and how often it uses each. */
  readonly patterns: readonly Pattern[];
  readonly values: readonly number[];
}

export type OpenLinearProgram = (program: LinearProgram) => Promise<OpenProgram>;

const CLOSE_ENOUGH = 1e-7;

/**
 * The lower bound of the relaxation by column generation: patterns are priced over all routes and days, and each
 * round gives a valid bound, so that it can be stopped at any time.
 */
export async function boundRelaxation(
  problem: Problem,
  open: OpenLinearProgram,
  options: BoundOptions,
): Promise<RelaxationBound> {
  const relaxation = relaxationOf(problem, options.withCuts ?? true);
  const pricing = new Pricing(relaxation);
  const master = await open(relaxation.program);
  try {
    return generateColumns(relaxation, pricing, master, options);
  } finally {
    master.close();
  }
}

function generateColumns(
  relaxation: Relaxation,
  pricing: Pricing,
  master: OpenProgram,
  options: BoundOptions,
): RelaxationBound {
  const { program, units } = relaxation;
  const end = options.clock() + (options.timeLimitSeconds ?? Number.POSITIVE_INFINITY) * 1000;
  const tell = (found: number, reach: number) =>
    options.onProgress?.({
      round: rounds,
      bound: found * units.centsPerCost,
      reach: reach * units.centsPerCost,
      columns: patterns.length,
    });
  const first = options.inAll && withAllowedSigns(program, spreadDuals(relaxation, options.inAll));
  const patterns = firstPatterns(relaxation, pricing, first ?? guessedDuals(relaxation, pricing));
  master.addColumns(patterns.map((pattern) => columnOf(relaxation, pattern)));
  let bound = Number.NEGATIVE_INFINITY;
  let best: Float64Array<ArrayBufferLike> = new Float64Array(program.rows.length);
  let values: number[] = [];
  let rounds = 0;
  let converged = false;
  if (first) {
    best = priceRoutes(relaxation, pricing, first).duals;
    bound = dualValue(program, best);
    tell(bound, Number.POSITIVE_INFINITY);
  }
  while (!converged) {
    const left = (end - options.clock()) / 1000;
    const stop = options.shouldStop;
    if (rounds > 0 && (left <= 0 || stop?.())) break;
    const solution = master.solve({
      ...(Number.isFinite(left) && { timeLimitSeconds: Math.max(0.1, left) }),
      ...(stop && { shouldStop: stop }),
    });
    if (solution.status !== 'optimal') break;
    rounds++;
    const duals = withAllowedSigns(program, solution.duals!);
    const reach = solution.objective;
    pricing.setDuals(duals);
    const { duals: raised, attractive } = priceRoutes(relaxation, pricing, duals);
    const found = dualValue(program, raised);
    if (found > bound) {
      bound = found;
      best = raised;
    }
    values = [...solution.values.subarray(program.columns.length)];
    converged = attractive.length === 0 || reach - bound <= CLOSE_ENOUGH * Math.abs(reach);
    if (!converged) {
      patterns.push(...attractive);
      master.addColumns(attractive.map((pattern) => columnOf(relaxation, pattern)));
    }
    tell(bound, reach);
  }
  pricing.setDuals(best);
  return {
    bound: bound * units.centsPerCost,
    converged,
    rounds,
    relaxation,
    pricing,
    duals: best,
    patterns,
    values,
  };
}
