import { checkPlan } from '../check-plan.js';
import type { Plan, Trip } from '../plan.js';
import type { Problem } from '../problem.js';

/**
 * The cheapest plan and its cost (cents), by trying all of them; the checker alone says what is allowed. A trip more
 * only uses more, so a plan with a fault is not extended. For tiny problems.
 */
export function bruteForce(problem: Problem): { cost: number; plan: Plan } {
  const trips = allTrips(problem);
  let best: { cost: number; plan: Plan } | null = null;

  const extend = (plan: Plan, from: number) => {
    const { faults, cost } = checkPlan(problem, plan);
    if (faults.length > 0) return;
    if (!best || cost.total < best.cost) best = { cost: cost.total, plan };
    for (let t = from; t < trips.length; t++) extend({ ...plan, trips: [...plan.trips, trips[t]] }, t);
  };
  for (const booked of allBooked(problem)) extend({ trips: [], ...booked }, 0);
  if (!best) throw new Error('no plan without a fault: not even the empty one');
  return best;
}

function allTrips(problem: Problem): Trip[] {
  return problem.vehicles.flatMap((_, vehicle) =>
    problem.routes.flatMap((route, r) =>
      route.conditionByDay.flatMap((index, day) => {
        if (index < 0 || route.kind !== problem.vehicles[vehicle].kind) return [];
        const crews = crewChoices(problem, route.crewGroup, day);
        const drops = allDrops(route.conditions[index].legPacks);
        return drops.flatMap((drops) => crews.map((crew) => ({ vehicle, day, route: r, drops, crew })));
      }),
    ),
  );
}

function allBooked(problem: Problem): Pick<Plan, 'bookedDrops' | 'bookedCrews'>[] {
  let plans: { bookedDrops: number[][]; bookedCrews: number[] }[] = [{ bookedDrops: [], bookedCrews: [] }];
  for (const { legPacks, crewGroup, day } of problem.booked) {
    plans = plans.flatMap(({ bookedDrops, bookedCrews }) =>
      allDrops(legPacks).flatMap((drops) =>
        crewChoices(problem, crewGroup, day).map((crew) => ({
          bookedDrops: [...bookedDrops, drops],
          bookedCrews: [...bookedCrews, crew],
        })),
      ),
    );
  }
  return plans;
}

function crewChoices(problem: Problem, group: number, day: number): number[] {
  if (problem.crews.length === 0 || group < 0) return [-1];
  return [...problem.crews.keys()].filter((crew) => problem.crews[crew].groupsByDay[day].includes(group));
}

function allDrops(legPacks: readonly number[]): number[][] {
  return legPacks.reduce<number[][]>(
    (lists, _, at) =>
      lists.flatMap((drops) =>
        Array.from({ length: legPacks[0] + 1 }, (_, packs) => [...drops, packs]).filter(
          (next) => at < legPacks.length - 1 || next.reduce((sum, one) => sum + one, 0) <= legPacks[0],
        ),
      ),
    [[]],
  );
}
