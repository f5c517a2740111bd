import { Draft } from '../bound/draft.js';
import type { OpenPlan, OpenProblem } from '../open-routes/open-problem.js';
import { type Round, shortestRounds } from '../open-routes/shortest-rounds.js';
import type { OpenProof, ProofLimits } from '../open-routes/solve-open.js';
import { solveWithHighs } from './highs.js';
import type { LinearProgram, LinearSolution } from './linear-program.js';
import { drawnIn, mostPerVisit, visitCuts } from './open-routes-cuts.js';

/** More sites than this have too many sets to write down. */
const MOST_SITES_PROVEN = 10;

/** HiGHS for `solveOpen`: exact quantities, and a proof where the problem is small enough. */
export const highsOpenMethods = ({ sites }: OpenProblem) => ({
  linear: solveWithHighs,
  methods: sites.length <= MOST_SITES_PROVEN ? { prove: proveOpenRoutes } : {},
});

/** A round on a day: the integer columns. */
interface DayRound extends Round {
  readonly day: number;
}

/**
 * The cheapest open plan that costs less than `below` (whole cents, or Infinity), proven, for up to `MOST_SITES_PROVEN`
 * sites: an integer program with a column for every set of sites and day, at the cost of its shortest round, solved by
 * HiGHS to a gap of zero. For every set S of sites, what S gets on a day fits the routes that touch S; with whole routes that is
 * their capacity. Rows for large sets come in where a solution breaks them.
 */
export async function proveOpenRoutes(
  problem: OpenProblem,
  below: number,
  limits: ProofLimits,
): Promise<OpenProof> {
  const began = limits.clock();
  const sets = setsOfRows(problem);
  const everything = dayRounds(problem);
  const relaxed = await solveWithHighs(openRoutesProgram(problem, everything, sets, below, false), limits);
  if (relaxed.status === 'infeasible') return { plan: null, bound: below, complete: true };
  if (relaxed.status !== 'optimal') return { plan: null, bound: Number.NEGATIVE_INFINITY, complete: false };
  const fixed = costWithoutDeliveries(problem);
  const spare = below - 1 - fixed - relaxed.objective + 1e-4;
  const useful = everything.filter((_, at) => relaxed.reducedCosts![at] <= spare);
  for (let bound = relaxed.objective + fixed; ; ) {
    const left = (limits.timeLimitSeconds ?? Number.POSITIVE_INFINITY) - (limits.clock() - began) / 1000;
    if (left <= 0 || limits.shouldStop?.()) return { plan: null, bound, complete: false };
    const solution = await solveWithHighs(openRoutesProgram(problem, useful, sets, below, true), {
      ...(limits.shouldStop && { shouldStop: limits.shouldStop }),
      ...(Number.isFinite(left) && { timeLimitSeconds: left }),
    });
    if (solution.status === 'infeasible') return { plan: null, bound: below, complete: true };
    bound = Math.max(bound, boundOf(solution) + fixed);
    if (!('values' in solution)) return { plan: null, bound, complete: false };
    const plan = planOf(problem, useful, solution.values);
    const missing = overloadedSets(problem, plan).filter((set) => !sets.includes(set));
    if (missing.length === 0) return { plan, bound, complete: solution.status === 'optimal' };
    sets.push(...new Set(missing));
  }
}

/** All sets of few sites; of many: those of one or two, and the set of all. */
function setsOfRows({ sites }: OpenProblem): number[] {
  const all = Array.from({ length: (1 << sites.length) - 1 }, (_, at) => at + 1);
  return sites.length <= 6 ? all : all.filter((set) => sizeOf(set) <= 2 || set === all.length);
}

const sizeOf = (set: number): number => (set === 0 ? 0 : (set & 1) + sizeOf(set >> 1));

const dayRounds = (problem: OpenProblem): DayRound[] =>
  shortestRounds(problem).flatMap((round) =>
    Array.from({ length: problem.days }, (_, day) => ({ ...round, day })),
  );

/** Columns: the rounds, then the units for each site and day. */
function openRoutesProgram(
  problem: OpenProblem,
  rounds: readonly DayRound[],
  sets: readonly number[],
  below: number,
  integer: boolean,
): LinearProgram {
  const { days, sites, base, fleet } = problem;
  const draft = new Draft();
  for (const round of rounds) draft.column(round.cost, 0, 1);
  sites.forEach((site) => {
    for (let day = 0; day < days; day++)
      draft.column((site.holdingCost - base.holdingCost) * (days - day), 0, mostPerVisit(problem, site));
  });
  const units = (site: number, day: number) => rounds.length + site * days + day;
  const enterRounds = (row: number, counts: (round: DayRound) => number) => {
    rounds.forEach((round, column) => {
      const coefficient = counts(round);
      if (coefficient !== 0) draft.enter(column, row, coefficient);
    });
  };
  for (let day = 0; day < days; day++) {
    enterRounds(draft.row(0, fleet.vehicles), (round) => Number(round.day === day));
    sites.forEach((_, site) => {
      enterRounds(draft.row(0, 1), (round) => (round.day === day ? (round.set >> site) & 1 : 0));
    });
    for (const set of sets) {
      const row = draft.row(Number.NEGATIVE_INFINITY, 0);
      enterRounds(row, (round) => (round.day === day ? -mostInto(problem, set & round.set) : 0));
      sites.forEach((_, site) => {
        if ((set >> site) & 1) draft.enter(units(site, day), row, 1);
      });
    }
  }
  stockRows(problem, draft, units);
  for (const { set, from, to, visits } of visitCuts(problem, sets))
    enterRounds(draft.row(visits, Number.POSITIVE_INFINITY), (round) =>
      Number(round.day >= from && round.day <= to && (round.set & set) !== 0),
    );
  if (Number.isFinite(below)) {
    const row = draft.row(Number.NEGATIVE_INFINITY, below - 1 - costWithoutDeliveries(problem) + 1e-4);
    draft.columns.forEach(({ cost }, column) => {
      draft.enter(column, row, cost);
    });
  }
  const columns = draft.columns.map((column, at) => ({ ...column, integer: integer && at < rounds.length }));
  return { columns, rows: draft.rows };
}

/** Levels of the sites, and what the base has ready. */
function stockRows(
  { days, sites, base }: OpenProblem,
  draft: Draft,
  units: (site: number, day: number) => number,
): void {
  let ready = base.opening;
  for (let day = 0; day < days; day++) {
    const sent = draft.row(Number.NEGATIVE_INFINITY, ready);
    sites.forEach((site, at) => {
      const drawn = drawnIn(site, 0, day);
      const level = draft.row(
        drawn + site.minimum - site.opening,
        site.maximum - site.opening + drawn - site.demand[day],
      );
      for (let before = 0; before <= day; before++) {
        draft.enter(units(at, before), level, 1);
        draft.enter(units(at, before), sent, 1);
      }
    });
    ready += base.production[day];
  }
}

/** Most units that one vehicle can bring to the sites of a set. */
function mostInto(problem: OpenProblem, set: number): number {
  const room = problem.sites.reduce(
    (sum, site, at) => sum + ((set >> at) & 1 ? mostPerVisit(problem, site) : 0),
    0,
  );
  return Math.min(problem.fleet.capacity, room);
}

function costWithoutDeliveries({ days, sites, base }: OpenProblem): number {
  const heldOf = (opening: number, changes: readonly number[], price: number) => {
    let level = opening;
    let held = 0;
    for (let day = 0; day < days; day++) {
      level += changes[day];
      held += level;
    }
    return held * price;
  };
  return sites.reduce(
    (sum, site) =>
      sum +
      heldOf(
        site.opening,
        site.demand.map((units) => -units),
        site.holdingCost,
      ),
    heldOf(base.opening, base.production, base.holdingCost),
  );
}

function planOf({ days }: OpenProblem, rounds: readonly DayRound[], values: ArrayLike<number>): OpenPlan {
  return {
    routes: rounds
      .filter((_, at) => values[at] > 0.5)
      .map(({ day, stops }) => ({
        day,
        stops: stops.map((site) => ({
          site,
          quantity: Math.round(values[rounds.length + site * days + day]),
        })),
      })),
  };
}

const overloadedSets = ({ fleet }: OpenProblem, { routes }: OpenPlan): number[] =>
  routes
    .filter(({ stops }) => stops.reduce((sum, { quantity }) => sum + quantity, 0) > fleet.capacity)
    .map(({ stops }) => stops.reduce((set, { site }) => set | (1 << site), 0));

function boundOf(solution: LinearSolution): number {
  if (solution.status === 'optimal') return solution.objective;
  return 'bound' in solution ? solution.bound : Number.NEGATIVE_INFINITY;
}
