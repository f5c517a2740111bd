import {
  buildProblem,
  planFromFlights,
  planScenario,
  type Scenario,
  type StandingFlight,
} from '@drumline/planning';
import { checkPlan, solve } from '@drumline/routing';
import { addDays } from '@drumline/units';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Cut, cuts, smallTerritory } from '../builders/small-territory.js';
import { hollowtarn } from './hollowtarn/hand-plan.js';

const whole = hollowtarn();
const options = { endTarget: 'operator', weather: null, isOver: () => true } as const;
const solver = (iterations: number) => (problem: Parameters<typeof solve>[0]) =>
  solve(problem, { seed: 1, budget: { iterations }, clock: () => 0 });

describe('plans on small random territories', () => {
  it('1,000 territories: every plan passes the checker', async () => {
    // `planScenario` throws where a plan breaks a rule by the checker's own reckoning.
    await fc.assert(
      fc.asyncProperty(cuts(whole), async (cut) => {
        const outcome = await planScenario(smallTerritory(whole, cut), options, solver(40));
        expect(outcome.status).toBe('solved');
      }),
      { numRuns: 1000 },
    );
  });

  it('tiny territories: no plan of all that can be written down is cheaper', async () => {
    const tiny = cuts(whole, { strips: 1, tails: 1, days: 2 });
    await fc.assert(
      fc.asyncProperty(tiny, async (cut: Cut) => {
        const scenario = { ...smallTerritory(whole, cut), bookedFlights: [] };
        const { problem } = buildProblem(scenario, 'operator');
        const solved = await solver(200)(problem);
        if (solved.status !== 'solved') throw new Error(solved.reasons.join(' '));
        const least = cheapest(scenario);
        expect(solved.cost.total).toBeLessThan(least + 0.01);
        if (mostTripsADay(solved.plan.trips) <= 3) expect(solved.cost.total).toBeGreaterThan(least - 0.01);
      }),
      { numRuns: 20 },
    );
  });
});

/** The least cost of every plan with up to three round trips a day of the one aeroplane to the one strip, each with 0 to 6 drums. */
function cheapest(scenario: Scenario): number {
  const built = buildProblem(scenario, 'operator');
  const strip = scenario.caches[0]!.place;
  const { tail, home } = scenario.aircraft[0]!;
  const most = scenario.places.find(({ code }) => code === strip)!.landingCapacityDrumsPerDay ?? 18;
  const loads = built.problem.routes.length > 0 ? [[], ...loadsWithin(most, 6, 3)] : [[]];
  let least = Number.POSITIVE_INFINITY;
  const visit = (day: number, flights: readonly StandingFlight[]): void => {
    if (day === scenario.days) {
      least = Math.min(least, costOf(flights));
      return;
    }
    for (const load of loads) {
      const today = load.map(
        (drums, i): StandingFlight => ({
          id: `${day}-${i}`,
          state: 'offered',
          date: addDays(scenario.firstDay, day),
          aircraft: tail,
          from: home,
          stops: [{ place: strip, drums }],
          to: home,
        }),
      );
      visit(day + 1, [...flights, ...today]);
    }
  };
  const costOf = (flights: readonly StandingFlight[]): number => {
    const { faults, cost } = checkPlan(built.problem, planFromFlights(built, flights));
    return faults.length === 0 ? cost.total : Number.POSITIVE_INFINITY;
  };
  visit(0, []);
  return least;
}

/** The drums of one to `trips` trips, the fuller first, each of at most `fullest` and together of at most `most`. */
function loadsWithin(most: number, fullest: number, trips: number): number[][] {
  if (trips === 0) return [];
  return Array.from({ length: Math.min(most, fullest) }, (_, i) => i + 1).flatMap((drums) => [
    [drums],
    ...loadsWithin(most - drums, drums, trips - 1).map((rest) => [drums, ...rest]),
  ]);
}

function mostTripsADay(trips: readonly { readonly day: number }[]): number {
  return Math.max(0, ...trips.map(({ day }) => trips.filter((trip) => trip.day === day).length));
}
