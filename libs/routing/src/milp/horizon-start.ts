import { eachRouteDay } from '../bound/flat-routes.js';
import type { RelaxationBound } from '../bound/lower-bound.js';
import type { Plan } from '../plan.js';
import type { Problem } from '../problem.js';
import { solveWithHighs } from './highs.js';
import { horizonProgram, type Round } from './horizon-program.js';
import type { SolveLimits } from './linear-program.js';
import { placeByUrgency } from './place-by-urgency.js';
import { conditionsOf } from './whole-horizon.js';

// Rounds in the integer program: so many for each store, and at least.
const ROUNDS_PER_STORE = 20;
const LEAST_ROUNDS = 1200;

/** Closer to its bound the integer program gives no better starts (docs/model.md): only later ones. */
const CLOSE_ENOUGH = 0.008;

/** Answers of the integer program that are placed: its last ones. Which of them gives the best start is chance (docs/model.md). */
const MOST_STARTS = 4;

/**
 * Plans to start the search from, the last found first: first which rounds are made in the whole horizon, by an integer program without
 * days, then on which day each, the most urgent first. `inAll`: the bound of the problem with all its days as one; `from` is where the
 * program starts. Empty: HiGHS found nothing in the time.
 */
export async function horizonStarts(
  problem: Problem,
  inAll: RelaxationBound,
  { from, ...limits }: SolveLimits & { readonly from: Plan },
): Promise<Plan[]> {
  const likely = withPlan(likelyRounds(inAll), from);
  const { rounds, times } = likely;
  const { program, firstRound } = horizonProgram(problem, inAll.relaxation, likely);
  const answers: Float64Array[] = [];
  const solution = await solveWithHighs(program, {
    ...limits,
    onImproved: (values) => answers.push(values.slice()),
    relativeGap: CLOSE_ENOUGH,
    start: { columns: rounds.map((_, at) => firstRound + at), values: times },
  });
  if (!('values' in solution)) return [];
  const timesOf = (values: ArrayLike<number>) => rounds.map((_, at) => Math.round(values[firstRound + at]));
  const different = new Map([...answers, solution.values].map(timesOf).map((all) => [all.join(), all]));
  return [...different.values()]
    .slice(-MOST_STARTS)
    .reverse()
    .map((all) =>
      placeByUrgency(
        problem,
        rounds.flatMap((round, at) => new Array<Round>(all[at]).fill(round)),
      ),
    );
}

/** Full rounds of the routes with the least reduced cost. */
function likelyRounds({ relaxation, pricing }: RelaxationBound): Round[] {
  const { problem } = relaxation;
  const least = new Float64Array(problem.routes.length).fill(Number.POSITIVE_INFINITY);
  eachRouteDay(pricing.flat, problem.days, (route, day, condition) => {
    least[route] = pricing.leastReducedCost(route, day, condition);
  });
  const ranked = [...least.keys()]
    .filter((route) => Number.isFinite(least[route]))
    .sort((a, b) => least[a] - least[b] || a - b);
  const most = Math.max(LEAST_ROUNDS, ROUNDS_PER_STORE * problem.stores.length);
  const rounds: Round[] = [];
  for (const route of ranked) {
    if (rounds.length >= most) break;
    const { legPacks } = conditionsOf(problem, route);
    for (const drops of fullDrops(legPacks)) rounds.push({ route, drops });
  }
  return rounds;
}

/** Every way to set down the whole load, at least one pack at each stop, within the leg limits. */
export function fullDrops(legPacks: readonly number[]): number[][] {
  const extend = (at: number, aboard: number): number[][] => {
    if (at === legPacks.length) return aboard === 0 ? [[]] : [];
    if (aboard > legPacks[at]) return [];
    return Array.from({ length: aboard }, (_, less) => less + 1).flatMap((drop) =>
      extend(at + 1, aboard - drop).map((rest) => [drop, ...rest]),
    );
  };
  return extend(0, legPacks[0]);
}

/** The rounds with those of the plan among them, and how often it makes each. */
function withPlan(rounds: readonly Round[], plan: Plan) {
  const keyOf = ({ route, drops }: Round) => `${route} ${drops.join()}`;
  const indexOf = new Map(rounds.map((round, at) => [keyOf(round), at]));
  const all = [...rounds];
  const times = rounds.map(() => 0);
  for (const { route, drops } of plan.trips) {
    const at = indexOf.get(keyOf({ route, drops })) ?? all.push({ route, drops }) - 1;
    indexOf.set(keyOf({ route, drops }), at);
    times[at] = (times[at] ?? 0) + 1;
  }
  return { rounds: all, times };
}
