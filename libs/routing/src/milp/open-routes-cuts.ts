import type { OpenProblem, Site } from '../open-routes/open-problem.js';

/** In the days `from` to `to` at least `visits` routes touch the set of sites (a bit each). */
export interface VisitCut {
  readonly set: number;
  readonly from: number;
  readonly to: number;
  readonly visits: number;
}

/**
 * What a set of sites must get in a run of days, opening as full as can be, over what one route can bring, rounded up
 * (minimum-visit inequalities, as in the branch-and-cut literature on inventory routing).
 */
export function visitCuts(problem: OpenProblem, sets: readonly number[]): VisitCut[] {
  const cuts: VisitCut[] = [];
  for (const set of sets)
    for (let from = 0; from < problem.days; from++)
      for (let to = from; to < problem.days; to++) {
        const members = problem.sites.filter((_, at) => (set >> at) & 1);
        const due = members.reduce((sum, site) => sum + dueIn(site, from, to), 0);
        const room = members.reduce((sum, site) => sum + mostPerVisit(problem, site), 0);
        const visits = Math.ceil(due / Math.min(problem.fleet.capacity, room));
        if (visits > 0) cuts.push({ set, from, to, visits });
      }
  return cuts;
}

/** Units drawn from day `from` to day `to`. */
export const drawnIn = ({ demand }: Site, from: number, to: number): number =>
  demand.slice(from, to + 1).reduce((sum, units) => sum + units, 0);

/** Most units that one visit can bring. */
export const mostPerVisit = ({ fleet }: OpenProblem, { maximum, minimum }: Site): number =>
  Math.min(fleet.capacity, maximum - Math.min(minimum, 0));

function dueIn(site: Site, from: number, to: number): number {
  const start = from === 0 ? site.opening : site.maximum - site.demand[from - 1];
  return Math.max(0, drawnIn(site, from, to) + site.minimum - start);
}
