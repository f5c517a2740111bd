import type { RelaxationBound } from '../bound/lower-bound.js';
import { promisingPatterns, promisingRoutes } from '../bound/promising-patterns.js';
import { costOf } from '../cost.js';
import type { Bound, MethodLimits, Methods } from '../methods.js';
import type { Plan } from '../plan.js';
import type { Problem } from '../problem.js';
import { search } from '../solvers/search/search.js';
import { horizonStart } from './horizon-start.js';
import { lowerBound } from './lower-bound.js';
import { polish } from './polish.js';

/** Rounds of search before the first integer program: it proves little without a good plan. */
const FIRST_SEARCH_ROUNDS = 2000;

// Shares of the time left after the bound: for finding a start beside a search, of that for a first search, alone or
// beside another, and of what is left then for the horizon program.
const START_SHARE_BESIDE = 0.55;
const QUICK_SHARE = 0.35;
const QUICK_SHARE_BESIDE = 0.1;
const HORIZON_SHARE = 0.6;

/** Patterns up to which an integer program is small enough to be solved before the long search. */
const FEW_PATTERNS = 3000;

/** Patterns up to which an integer program may still better the plan after the long search. */
const MOST_TO_POLISH = 15_000;

const A_CENT = 1;

/** Nodes of the horizon program, which needs a good answer but no proof. */
const HORIZON_NODES = 2000;

/** Where there is no time limit, the integer program at the end is a small one: it ends soon, and alike every time. */
const WITHOUT_TIME = { mostPatterns: 1000, mostNodes: 20 };

/**
 * Bound and polish by HiGHS for `solve`, for one problem: what the bound learns, the polish goes on from. Blocks its
 * thread while a linear program runs. Small problems are solved to the end within the bound's share of the time; of
 * larger ones the search gets the routes that a better plan can use, and the polish what it leaves.
 */
export function highsMethods(): Required<Pick<Methods, 'bound' | 'polish'>> {
  let known: RelaxationBound | null = null;
  return {
    bound: async (problem, limits) => {
      const began = limits.clock();
      const {
        known: found,
        bound,
        converged,
      } = await lowerBound(problem, {
        ...optionsOf(limits),
        onProgress: (progress) => limits.onProgress({ bound: progress.bound }),
      });
      known = found;
      if (!Number.isFinite(bound)) return { bound: null, worthPolish: false };
      if (!converged) return { bound, worthPolish: false };
      return limits.seconds === null
        ? { bound, routes: promisingRoutes(found, costOf(problem, limits.latest()).total), worthPolish: true }
        : startFrom(problem, found, limits, began, limits.seconds);
    },
    polish: async (problem, plan, limits) => {
      if (known?.relaxation.problem !== problem) return { plan, bound: null };
      const { bound, ...found } = await polish(problem, plan, {
        ...optionsOf(limits),
        known,
        ...(limits.seconds === null && { ...WITHOUT_TIME, onlyComplete: true }),
        onImproved: (better) => limits.onProgress({ plan: better }),
      });
      return { plan: found.status === 'polished' ? found.plan : plan, bound };
    },
  };
}

/**
 * A plan to start the long search from: proven optimal at once where few patterns can better it, else by way of the
 * horizon program.
 */
async function startFrom(
  problem: Problem,
  known: RelaxationBound,
  limits: MethodLimits,
  began: number,
  seconds: number,
): Promise<Bound> {
  limits.onProgress({ bound: known.bound });
  const left = () => seconds - (limits.clock() - began) / 1000;
  const prove = (plan: Plan) => proveSmall(problem, plan, known, limits, left());
  const quickShare = limits.beside ? QUICK_SHARE_BESIDE : QUICK_SHARE;
  const startEnds = left() * (limits.beside ? 1 - START_SHARE_BESIDE : 0);
  const leftForStart = () => left() - startEnds;
  let best = await prove(shortSearch(problem, limits.latest(), limits, quickShare * leftForStart()));
  if (best.cost - best.bound >= A_CENT && leftForStart() > 0)
    best = await prove(await byHorizon(problem, known, best.plan, limits, leftForStart));
  return {
    bound: best.bound,
    start: best.plan,
    routes: promisingRoutes(known, best.cost),
    worthPolish: promisingPatterns(known, best.cost, MOST_TO_POLISH).complete,
  };
}

/** The plan with its cost and bound, or the optimum where few patterns can better it. */
async function proveSmall(
  problem: Problem,
  plan: Plan,
  known: RelaxationBound,
  limits: MethodLimits,
  seconds: number,
) {
  const polished = await polish(problem, plan, {
    ...optionsOf(limits),
    timeLimitSeconds: Math.max(0, seconds),
    known,
    mostPatterns: FEW_PATTERNS,
    onlyComplete: true,
    onImproved: (better) => limits.onProgress({ plan: better }),
  });
  return polished.status === 'polished' ? polished : { ...polished, plan, cost: costOf(problem, plan).total };
}

async function byHorizon(
  problem: Problem,
  known: RelaxationBound,
  best: Plan,
  limits: MethodLimits,
  left: () => number,
): Promise<Plan> {
  const horizon = await horizonStart(known, best, {
    shouldStop: limits.shouldStop,
    mostNodes: HORIZON_NODES,
    timeLimitSeconds: left() * HORIZON_SHARE,
  });
  if (!horizon) return best;
  const found = shortSearch(problem, horizon, limits, left() / 2);
  return costOf(problem, found).total < costOf(problem, best).total ? found : best;
}

function shortSearch(
  problem: Problem,
  from: Plan,
  { clock, shouldStop, onProgress }: MethodLimits,
  seconds: number,
): Plan {
  const limit = clock() + seconds * 1000;
  const stop = () => shouldStop() || clock() > limit;
  const budget = { iterations: FIRST_SEARCH_ROUNDS };
  return search(problem, from, { seed: 1, budget, clock, shouldStop: stop, onProgress }).plan;
}

const optionsOf = ({ clock, shouldStop, seconds }: MethodLimits) => ({
  clock,
  shouldStop,
  ...(seconds !== null && { timeLimitSeconds: seconds }),
});
