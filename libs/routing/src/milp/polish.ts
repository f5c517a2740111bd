import type { BoundOptions, RelaxationBound } from '../bound/lower-bound.js';
import { promisingPatterns } from '../bound/promising-patterns.js';
import { columnOf, type Pattern } from '../bound/relaxation.js';
import { checkPlan } from '../check-plan.js';
import { costOf } from '../cost.js';
import type { Plan } from '../plan.js';
import type { Problem } from '../problem.js';
import { solveWithHighs } from './highs.js';
import type { LinearProgram, LinearSolution, SolveLimits } from './linear-program.js';
import { lowerBound } from './lower-bound.js';
import { patternsOfPlan, planOfPatterns } from './plan-of-patterns.js';

export interface PolishOptions extends BoundOptions {
  /** The bound of this problem, where it is known already. */
  readonly known?: RelaxationBound;
  /** Most patterns in the integer program; beyond them nothing is proven. */
  readonly mostPatterns?: number;
  /** Do nothing where not all patterns that could better the plan fit. */
  readonly onlyComplete?: boolean;
  /** Nodes after which the integer program is given up. */
  readonly mostNodes?: number;
  /** Told of each better plan, with its cost (cents). */
  readonly onImproved?: (plan: Plan, cost: number) => void;
}

export type Polished =
  | {
      readonly status: 'polished';
      /** The best plan known: the given one where nothing better was found. */
      readonly plan: Plan;
      /** Cents. */
      readonly cost: number;
      /** No plan on the routes of the problem costs less (cents). */
      readonly bound: number;
      readonly improved: boolean;
    }
  | { readonly status: 'no answer'; readonly why: string; readonly bound: number };

/**
 * The integer program over the patterns that can be part of a better plan than `from`, solved by HiGHS. Hours are added
 * up by kind of vehicle; where the answer cannot be divided among the vehicles and crews it is "no answer".
 */
export async function polish(problem: Problem, from: Plan, options: PolishOptions): Promise<Polished> {
  const began = options.clock();
  const known = options.known ?? (await lowerBound(problem, options)).known;
  const before = costOf(problem, from).total;
  const { patterns, complete } = promisingPatterns(known, before, options.mostPatterns ?? 40_000);
  const start = patternsOfPlan(problem, from);
  const columns = withStart(patterns, start);
  const left = (options.timeLimitSeconds ?? Number.POSITIVE_INFINITY) - (options.clock() - began) / 1000;
  if (left <= 0 || (options.onlyComplete && !complete))
    return { status: 'polished', plan: from, cost: before, bound: known.bound, improved: false };
  const best = { plan: from, cost: before };
  const take = (values: ArrayLike<number>): boolean => {
    const plan = planOfPatterns(problem, travelled(columns.patterns, values));
    const checked = plan && checkPlan(problem, plan);
    if (!checked || checked.faults.length > 0) return false;
    if (checked.cost.total < best.cost - 0.5) {
      Object.assign(best, { plan, cost: checked.cost.total });
      options.onImproved?.(plan, checked.cost.total);
    }
    return true;
  };
  const first = known.relaxation.program.columns.length;
  const solution = await solveWithHighs(programOf(known, columns.patterns), {
    ...(Number.isFinite(left) && { timeLimitSeconds: left }),
    ...(options.mostNodes !== undefined && { mostNodes: options.mostNodes }),
    ...(options.shouldStop && { shouldStop: options.shouldStop }),
    start: { columns: columns.patterns.map((_, at) => first + at), values: columns.start },
    onImproved: (values) => void take(values.subarray(first)),
  } satisfies SolveLimits);
  const bound = complete ? provenBound(known, solution, before) : known.bound;
  const assigned = 'values' in solution ? take(solution.values.subarray(first)) : true;
  if (!assigned && best.plan === from)
    return {
      status: 'no answer',
      why: NOT_DIVIDED,
      bound,
    };
  return { status: 'polished', ...best, bound: Math.min(bound, best.cost), improved: best.plan !== from };
}

const NOT_DIVIDED =
  'the hours are enough by kind of vehicle, but no plan for single vehicles and crews was found that passes the check';

/** The patterns with those of the starting plan among them, and how often that plan travels each. */
function withStart(patterns: readonly Pattern[], start: readonly Pattern[]) {
  const keyOf = ({ route, day, drops }: Pattern) => `${route} ${day} ${drops.join()}`;
  const indexOf = new Map(patterns.map((pattern, at) => [keyOf(pattern), at]));
  const all = [...patterns];
  const times = patterns.map(() => 0);
  for (const pattern of start) {
    const at = indexOf.get(keyOf(pattern)) ?? all.push(pattern) - 1;
    indexOf.set(keyOf(pattern), at);
    times[at] = (times[at] ?? 0) + 1;
  }
  return { patterns: all, start: times };
}

function programOf({ relaxation }: RelaxationBound, patterns: readonly Pattern[]): LinearProgram {
  return {
    rows: relaxation.program.rows,
    columns: [
      ...relaxation.program.columns,
      ...patterns.map((pattern) => ({ ...columnOf(relaxation, pattern), integer: true })),
    ],
  };
}

const travelled = (patterns: readonly Pattern[], values: ArrayLike<number>): Pattern[] =>
  patterns.flatMap((pattern, at) => new Array<Pattern>(Math.round(values[at])).fill(pattern));

/** Plans that use a pattern left out cost no less than the plan to beat, so that the program speaks for the rest. */
function provenBound(known: RelaxationBound, solution: LinearSolution, before: number): number {
  const { centsPerCost } = known.relaxation.units;
  switch (solution.status) {
    case 'optimal':
      return Math.max(known.bound, Math.min(before, solution.objective * centsPerCost));
    case 'feasible':
    case 'no answer':
      return Math.max(known.bound, Math.min(before, solution.bound * centsPerCost));
    default:
      return known.bound;
  }
}
