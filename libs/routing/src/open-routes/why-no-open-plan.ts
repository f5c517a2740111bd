import type { OpenProblem } from './open-problem.js';

/**
 * Reasons why no plan can exist, each a necessary condition that fails; empty: none was found, which is no promise.
 * A site alone cannot take a vehicle-load a day fast enough; the fleet or the base cannot move what all must get.
 */
export function whyNoOpenPlan(problem: OpenProblem): string[] {
  const sites = problem.sites.flatMap((_, site) => whySiteFails(problem, site) ?? []);
  return sites.length > 0 ? sites : whyFleetOrBaseFails(problem);
}

function whySiteFails({ sites, fleet, days }: OpenProblem, at: number): string | null {
  const { id, opening, demand, minimum, maximum } = sites[at];
  let level = opening;
  for (let day = 0; day < days; day++) {
    level = Math.max(level, Math.min(maximum, level + fleet.capacity)) - demand[day];
    if (level < minimum)
      return (
        `${id}: even with a full vehicle of ${fleet.capacity} units every day (as far as ${maximum} fit) ` +
        `it ends day ${day} at ${level}, below its minimum of ${minimum}`
      );
  }
  return null;
}

function whyFleetOrBaseFails({ sites, fleet, base, days }: OpenProblem): string[] {
  let ready = base.opening;
  for (let day = 0; day < days; day++) {
    const due = sites.reduce((sum, site) => sum + dueBy(site, day), 0);
    const carried = (day + 1) * fleet.vehicles * fleet.capacity;
    if (due > carried)
      return [`by day ${day} the sites must get ${due} units, the fleet can have carried ${carried}`];
    if (due > ready) return [`by day ${day} the sites must get ${due} units, the base has had ${ready}`];
    ready += base.production[day];
  }
  return [];
}

/** Units that must have been delivered to a site by the end of a day. */
function dueBy({ opening, demand, minimum }: OpenProblem['sites'][number], day: number): number {
  const drawn = demand.slice(0, day + 1).reduce((sum, units) => sum + units, 0);
  return Math.max(0, drawn + minimum - opening);
}
