import { deliveriesOf, type Outcome, type Plan, type Problem, storeCourse } from '@drumline/routing';
import type { BlockingLimit, BuiltProblem } from '../problem/problem-map.js';
import type { Shortfall } from './find-shortages.js';
import { relaxations } from './relaxations.js';

/** Solves a problem; "quick" asks for a good answer in little time. */
export type Solver = (problem: Problem, effort: 'full' | 'quick') => Promise<Outcome>;

/** A shortage with the limits that, each relaxed alone, would spare it. Empty: none would. */
export interface BlockedShortfall extends Shortfall {
  readonly by: readonly BlockingLimit[];
}

/**
 * Which limit stands in the way of each shortage, found by solving again without one limit at a time, not guessed. A
 * shortage at the opening, or at a place that no route reaches, is beyond every limit; one of the end target is a
 * matter of price. No more limits are tried once
 * `isOver` says that the time is up.
 */
export async function findBlockers(
  built: BuiltProblem,
  shortfalls: readonly Shortfall[],
  solver: Solver,
  isOver: () => boolean,
): Promise<readonly BlockedShortfall[]> {
  const reached = new Set(built.problem.routes.flatMap(({ stops }) => stops));
  const open = shortfalls.filter(
    ({ day, place, level }) =>
      day > 0 && level !== 'short of the end target' && reached.has(built.map.storeOf.get(place)!),
  );
  const blocked = new Map<Shortfall, BlockingLimit[]>(open.map((shortfall) => [shortfall, []]));
  for (const [limit, relax] of Object.entries(relaxations)) {
    if (open.length === 0 || isOver()) break;
    const problem = relax(built);
    const outcome = await solver(problem, 'quick');
    if (outcome.status !== 'solved') continue;
    for (const shortfall of open)
      if (isSpared(problem, outcome.plan, shortfall)) blocked.get(shortfall)!.push(limit as BlockingLimit);
  }
  return shortfalls.map((shortfall) => ({ ...shortfall, by: blocked.get(shortfall) ?? [] }));
}

function isSpared(problem: Problem, plan: Plan, { place, day, level, limitLitres }: Shortfall): boolean {
  const index = problem.stores.findIndex(({ id }) => id === place);
  const { levels, unmet } = storeCourse(problem.stores[index]!, deliveriesOf(problem, plan)[index]!);
  return level === 'run out' ? unmet[day - 1] === 0 : levels[day - 1]! >= limitLitres;
}
