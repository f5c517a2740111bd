import { planScenario, type Scenario } from '@drumline/planning';
import { randomFrom, solve } from '@drumline/routing';
import { kilograms, litres } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { hollowtarn } from './hand-plan.js';

/** The territory on another morning: reports, sick pilots, aircraft in the hangar, booked times, flights settled already. */
function another(seed: number): Scenario {
  const random = randomFrom(seed);
  const oneOf = <T>(items: readonly T[]): T => items[Math.floor(random() * items.length)]!;
  const scenario = hollowtarn();
  const dates = Array.from({ length: 14 }, (_, day) => `2027-06-${14 + day}`);
  const strips = scenario.places.filter(({ kind }) => kind === 'strip').map(({ code }) => code);
  const today = Math.floor(random() * 4);
  const settled = scenario.handPlan.filter(({ date }) => date <= dates[today + 1]!);
  return {
    ...scenario,
    asOf: `${dates[today]}T${oneOf(['05:00', '06:52', '10:30'])}Z`,
    surfaceReports: Array.from({ length: 4 }, () => ({
      place: oneOf(strips),
      state: oneOf(['soft', 'closed', 'damp'] as const),
      at: `${dates[today]}T04:00Z`,
      by: 'strip helper',
      untilDate: oneOf(dates),
    })),
    pilots: scenario.pilots.map((pilot) => ({ ...pilot, daysOff: [...pilot.daysOff, oneOf(dates)] })),
    aircraft: scenario.aircraft.map((aircraft) => {
      const out = oneOf(dates);
      return {
        ...aircraft,
        absences: [...aircraft.absences, { from: out, until: out, reason: 'inspection' }],
      };
    }),
    bookedFlights: scenario.bookedFlights.map((flight) => ({
      ...flight,
      departs: oneOf(['08:00', '09:30', '11:00']),
    })),
    flights: settled.map((flight) => ({
      ...flight,
      state: flight.date < dates[today]! ? ('reported' as const) : oneOf(['approved', 'offered'] as const),
    })),
    policy: {
      ...scenario.policy,
      drum: { ...scenario.policy.drum, grossKg: kilograms(oneOf([176, 180, 184])) },
      flyingDay: { ...scenario.policy.flyingDay, lastLanding: oneOf(['20:00', '15:00', '13:00']) },
    },
    drums: scenario.drums.filter(() => random() < 0.95),
    counts: [
      {
        place: 'XCIN',
        at: '2027-06-13T07:00Z',
        litres: litres(1500),
        openDrums: 1,
        by: 'helper',
        seenFrom: 'ground',
      },
    ],
  };
}

describe('plans on changed territories', () => {
  // `planScenario` throws where a plan breaks a rule by the checker's own reckoning.
  it.each([1, 2, 3, 4, 5, 6])('morning %i: the plan breaks no rule', async (seed) => {
    const outcome = await planScenario(
      another(seed),
      { endTarget: 'hand plan', weather: null, isOver: () => true },
      (problem) => solve(problem, { seed, budget: { iterations: 100 }, clock: () => 0 }),
    );
    expect(outcome.status).toBe('solved');
  });
});
