import type { Fault } from '../check/fault.js';
import type { OpenCost, OpenPlan, OpenProblem, OpenRoute, Site } from './open-problem.js';

/**
 * What an open plan costs (cents) and every rule that it breaks, computed from the problem alone, day by day, with
 * nothing shared with the solvers.
 */
export function checkOpenPlan(problem: OpenProblem, plan: OpenPlan): { faults: Fault[]; cost: OpenCost } {
  const faults = [...routeFaults(problem, plan), ...visitFaults(problem, plan), ...dayFaults(problem, plan)];
  const base = followBase(problem, plan);
  const sites = problem.sites.map((site, index) => followSite(site, deliveredByDay(problem, plan, index)));
  faults.push(...base.faults, ...sites.flatMap((site) => site.faults));
  const travel = plan.routes.reduce((sum, route) => sum + travelOf(problem, route), 0);
  const holding = sites.reduce((sum, site) => sum + site.holding, base.holding);
  return { faults, cost: { travel, holding, total: travel + holding } };
}

function routeFaults({ fleet, sites, days }: OpenProblem, plan: OpenPlan): Fault[] {
  return plan.routes.flatMap(({ day, stops }, at) => {
    const where = `route ${at} on day ${day}`;
    const load = stops.reduce((sum, stop) => sum + stop.quantity, 0);
    const faults: Fault[] = [];
    if (!Number.isInteger(day) || day < 0 || day >= days)
      faults.push({ where, what: 'the day is not planned', mend: `use days 0 to ${days - 1}` });
    if (load > fleet.capacity)
      faults.push({
        where,
        what: `${load} units aboard, a vehicle carries ${fleet.capacity}`,
        mend: `set down ${load - fleet.capacity} units less`,
      });
    for (const { site, quantity } of stops) {
      if (!sites[site])
        faults.push({ where, what: `there is no site ${site}`, mend: `use sites 0 to ${sites.length - 1}` });
      if (!Number.isInteger(quantity) || quantity < 0)
        faults.push({
          where,
          what: `${quantity} units for site ${site}`,
          mend: 'give a whole number from 0',
        });
    }
    return faults;
  });
}

function visitFaults({ sites }: OpenProblem, plan: OpenPlan): Fault[] {
  const seen = new Set<string>();
  return plan.routes.flatMap(({ day, stops }) =>
    stops.flatMap(({ site }) => {
      const key = `${day} ${site}`;
      if (!seen.has(key)) {
        seen.add(key);
        return [];
      }
      return [
        {
          where: `${sites[site]?.id} on day ${day}`,
          what: 'visited more than once on the day',
          mend: 'make it one visit',
        },
      ];
    }),
  );
}

function dayFaults({ days, fleet }: OpenProblem, plan: OpenPlan): Fault[] {
  return Array.from({ length: days }, (_, day) => ({
    day,
    routes: plan.routes.filter((route) => route.day === day).length,
  }))
    .filter(({ routes }) => routes > fleet.vehicles)
    .map(({ day, routes }) => ({
      where: `day ${day}`,
      what: `${routes} routes, ${fleet.vehicles} vehicles with one route each`,
      mend: `take off ${routes - fleet.vehicles} routes`,
    }));
}

function followBase({ base, days }: OpenProblem, plan: OpenPlan) {
  const faults: Fault[] = [];
  let level = base.opening;
  let holding = 0;
  for (let day = 0; day < days; day++) {
    for (const route of plan.routes) {
      if (route.day === day) level -= route.stops.reduce((sum, stop) => sum + stop.quantity, 0);
    }
    if (level < 0)
      faults.push({
        where: `base on day ${day}`,
        what: `${-level} units more loaded than there are`,
        mend: 'load them later',
      });
    level += base.production[day];
    holding += level * base.holdingCost;
  }
  return { faults, holding };
}

function followSite(
  { id, opening, demand, minimum, maximum, holdingCost }: Site,
  delivered: readonly number[],
) {
  const faults: Fault[] = [];
  let level = opening;
  let holding = 0;
  delivered.forEach((quantity, day) => {
    level += quantity;
    const where = `${id} on day ${day}`;
    if (level > maximum)
      faults.push({
        where,
        what: `${level} units after delivery, at most ${maximum} fit`,
        mend: `bring ${level - maximum} units less`,
      });
    level -= demand[day];
    if (level < minimum)
      faults.push({
        where,
        what: `${level} units at the end of the day, the minimum is ${minimum}`,
        mend: `bring ${minimum - level} units more by then`,
      });
    holding += level * holdingCost;
  });
  return { faults, holding };
}

function deliveredByDay({ days }: OpenProblem, plan: OpenPlan, site: number): number[] {
  const delivered = new Array<number>(days).fill(0);
  for (const { day, stops } of plan.routes)
    for (const stop of stops) if (stop.site === site) delivered[day] += stop.quantity;
  return delivered;
}

function travelOf({ travelCost }: OpenProblem, { stops }: OpenRoute): number {
  const places = [0, ...stops.map((stop) => stop.site + 1), 0];
  return places.slice(1).reduce((sum, place, at) => sum + (travelCost[places[at]][place] ?? 0), 0);
}
