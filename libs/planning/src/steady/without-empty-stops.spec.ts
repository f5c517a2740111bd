import { checkPlan, costOf, type Plan, type Problem, solve, type Trip } from '@drumline/routing';
import { nauticalMiles } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { planScenario } from '../plan-scenario.js';
import { buildProblem } from '../problem/build-problem.js';
import type { Solver } from '../shortages/find-blockers.js';
import { tinyTask, tinyTerritory } from '../tiny-territory.js';
import { withoutEmptyStops } from './without-empty-stops.js';

const near = tinyTerritory().distances.map(({ between, distanceNm }) => ({
  between,
  distanceNm: between.join() === 'NOR,SOU' ? nauticalMiles(40) : distanceNm,
}));
/** NOR alone wants fuel; SOU is near enough to be flown over on the way. */
const scenario = tinyTerritory({
  distances: near,
  helicopterTasks: [tinyTask('2031-03-04', 'NOR', 500)],
});
const { problem } = buildProblem(scenario, 'minimum');
const solver: Solver = (its) => solve(its, { seed: 1, budget: { iterations: 50 }, clock: () => 0 });
const found = async (): Promise<Plan> => {
  const outcome = await solver(problem, 'full');
  if (outcome.status === 'infeasible') throw new Error(outcome.reasons.join(' '));
  return outcome.plan;
};

/** The trips to NOR by way of SOU, where nothing is set down. */
const byWayOfSou = ({ routes }: Problem, plan: Plan): Plan => ({
  ...plan,
  trips: plan.trips.map((trip): Trip => {
    const [stop] = routes[trip.route]!.stops;
    const route = routes.findIndex(({ stops }) => stops.length === 2 && stops.includes(stop!));
    const drops = routes[route]!.stops.map((each) => (each === stop ? trip.drops[0]! : 0));
    return { ...trip, route, drops };
  }),
});
const emptyStops = ({ trips }: Plan): number =>
  trips.flatMap(({ drops }) => drops).filter((packs) => packs === 0).length;

describe('a landing without a purpose', () => {
  it('is taken out, with its hours and money, and what is set down elsewhere stays', async () => {
    const direct = await found();
    const roundabout = byWayOfSou(problem, direct);
    expect(emptyStops(roundabout)).toBe(direct.trips.length);
    const mended = withoutEmptyStops(problem, roundabout);
    expect(mended).toEqual(direct);
    expect(costOf(problem, mended).travel).toBeLessThan(costOf(problem, roundabout).travel);
    expect(checkPlan(problem, mended).faults).toEqual([]);
  });

  it('a trip that sets nothing down anywhere is left out', async () => {
    const direct = await found();
    const [trip] = direct.trips;
    const idle = { ...trip!, drops: trip!.drops.map(() => 0) };
    expect(withoutEmptyStops(problem, { ...direct, trips: [...direct.trips, idle] })).toEqual(direct);
  });

  it('a plan in which every landing has one stays as it is', async () => {
    const direct = await found();
    expect(withoutEmptyStops(problem, direct)).toEqual(direct);
  });

  it('is in no plan document, whatever the search found: legs, stops and cost are of one route', async () => {
    const outcome = await planScenario(
      scenario,
      { endTarget: 'minimum', weather: null, isOver: () => true },
      async (its, effort) => {
        const answer = await solver(its, effort);
        return answer.status === 'solved' ? { ...answer, plan: byWayOfSou(its, answer.plan) } : answer;
      },
    );
    if (outcome.status === 'infeasible') throw new Error(outcome.reasons.join(' '));
    const { flights, tiers } = outcome.plan;
    expect(flights.length).toBeGreaterThan(0);
    for (const { stops, legs } of flights) {
      expect(stops.every(({ drums }) => drums > 0)).toBe(true);
      expect(legs.slice(0, -1).map(({ to }) => to)).toEqual(stops.map(({ place }) => place));
    }
    expect(tiers.travel).toBe(flights.reduce((sum, { cost }) => sum + cost.flight, 0));
  });
});
