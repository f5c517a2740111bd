import type { RelaxationBound } from '../bound/lower-bound.js';
import { promisingPatterns, promisingRoutes } from '../bound/promising-patterns.js';
import { costOf } from '../cost.js';
import type { Bound, MethodLimits, Methods } from '../methods.js';
import type { Problem } from '../problem.js';
import { search } from '../solvers/search/search.js';
import { horizonStarts } from './horizon-start.js';
import { lowerBound } from './lower-bound.js';
import { polish } from './polish.js';
import { wholeHorizon } from './whole-horizon.js';

/** Rounds of search after the horizon program: most of what is missing is found at once. */
const FIRST_SEARCH_ROUNDS = 500;

/** Routes x days from which the horizon program goes before the bound, which then takes long. */
const MANY_ROUTE_DAYS = 400_000;

const A_CENT = 1;

/** Share of the time left that the way by the horizon program may take: it has nearly always ended long before. */
const START_SHARE = 0.5;

/** Patterns up to which an integer program is small enough to be solved before the long search. */
const FEW_PATTERNS = 3000;

/** Patterns up to which an integer program may still better the plan after the long search. */
const MOST_TO_POLISH = 15_000;

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
      const left = () => (limits.seconds ?? Number.POSITIVE_INFINITY) - (limits.clock() - began) / 1000;
      const inAll = (await lowerBound(wholeHorizon(problem), optionsOf(limits))).known;
      const isLarge = problem.routes.length * problem.days > MANY_ROUTE_DAYS;
      const goByHorizon = () => byHorizon(problem, inAll, { ...limits, seconds: START_SHARE * left() });
      if (limits.seconds !== null && isLarge) await goByHorizon();
      const found = await lowerBound(problem, {
        ...optionsOf(limits),
        inAll,
        ...(limits.seconds !== null && { timeLimitSeconds: Math.max(0, left()) }),
        onProgress: (progress) => limits.onProgress({ bound: progress.bound }),
      });
      known = found.known;
      const { bound, converged } = found;
      if (!Number.isFinite(bound)) return { bound: null, worthPolish: false };
      if (!converged) return { bound, worthPolish: false };
      if (limits.seconds === null) return { bound, routes: routesBelow(known, limits), worthPolish: true };
      const first = await proveSmall(problem, known, limits, left());
      if (isLarge || first.cost - first.bound < A_CENT || left() <= 0) return first;
      await goByHorizon();
      return proveSmall(problem, known, limits, left());
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

const routesBelow = (known: RelaxationBound, { latest }: MethodLimits) =>
  promisingRoutes(known, costOf(known.relaxation.problem, latest()).total);

/** The optimum where few patterns can better the best plan so far, and what a long search may leave out. */
async function proveSmall(
  problem: Problem,
  known: RelaxationBound,
  limits: MethodLimits,
  seconds: number,
): Promise<Bound & { readonly bound: number; readonly cost: number }> {
  const polished = await polish(problem, limits.latest(), {
    ...optionsOf(limits),
    timeLimitSeconds: Math.max(0, seconds),
    known,
    mostPatterns: FEW_PATTERNS,
    onlyComplete: true,
    onImproved: (better) => limits.onProgress({ plan: better }),
  });
  const { cost } =
    polished.status === 'polished' ? polished : { cost: costOf(problem, limits.latest()).total };
  return {
    bound: polished.bound,
    cost,
    ...(polished.status === 'polished' && { start: polished.plan }),
    routes: promisingRoutes(known, cost),
    worthPolish: promisingPatterns(known, cost, MOST_TO_POLISH).complete,
  };
}

/** Tells of good plans to start the long search from: each is searched a little first, for which is best shows only then. */
async function byHorizon(problem: Problem, inAll: RelaxationBound, limits: MethodLimits): Promise<void> {
  const { clock, shouldStop, onProgress } = limits;
  const seconds = limits.seconds ?? 0;
  const end = clock() + seconds * 1000;
  const starts = await horizonStarts(problem, inAll, {
    from: limits.latest(),
    shouldStop,
    mostNodes: HORIZON_NODES,
    timeLimitSeconds: seconds,
  });
  const stop = () => shouldStop() || clock() > end;
  const budget = { iterations: FIRST_SEARCH_ROUNDS };
  for (const start of starts)
    onProgress(search(problem, start, { seed: 1, budget, clock, shouldStop: stop }));
}

const optionsOf = ({ clock, shouldStop, seconds }: MethodLimits) => ({
  clock,
  shouldStop,
  ...(seconds !== null && { timeLimitSeconds: seconds }),
});
