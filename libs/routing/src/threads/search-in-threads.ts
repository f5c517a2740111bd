import type { Bound, Methods } from '../index.js';
import { SearchTeam } from './search-team.js';

/**
 * The search in several worker threads, a seed each. With an iteration budget they work apart, and the best plan counts,
 * the lowest seed's among equals. With a time budget each takes up the best plan of all now and then; one core is left to
 * the bound until it comes, and then all go on from what it brought. Ends early when `shouldStop` says so (asked ten
 * times a second).
 */
export const searchInThreads =
  (threads: number): NonNullable<Methods['search']> =>
  (problem, from, options, guide) => {
    const team = new SearchTeam(problem, options);
    const growTo = (
      size: number,
      start = from,
      { routes = options.routes, bound = null }: Partial<Bound> = {},
    ) => {
      while (team.size < size)
        team.join(start, {
          routes: routes ?? null,
          isNear: start !== from,
          bound: bound ?? options.bound ?? null,
        });
    };
    growTo(guide ? Math.max(1, threads - 1) : threads);
    guide?.then(
      (found) => {
        if (team.isOver) return;
        const { start, routes, bound } = found;
        team.tell({
          ...(start && { plan: start, isNear: true }),
          ...(routes && { routes }),
          ...(bound && { bound }),
        });
        growTo(threads, start ?? team.bestPlan ?? from, found);
      },
      (error: Error) => team.fail(error),
    );
    return team.finish(from);
  };
