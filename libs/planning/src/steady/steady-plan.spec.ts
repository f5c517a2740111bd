import { checkPlan, costOf, type Plan } from '@drumline/routing';
import { describe, expect, it } from 'vitest';
import { buildProblem } from '../problem/build-problem.js';
import { planFromFlights } from '../problem/plan-from-flights.js';
import type { Scenario, StandingFlight } from '../scenario.js';
import { tinyCache, tinyTask, tinyTerritory } from '../tiny-territory.js';
import { fragilityOf } from './fragility.js';
import { steadyPlan } from './steady-plan.js';

const flight = (id: string, date: string, drums: number, place = 'NOR'): StandingFlight => ({
  id,
  state: 'offered',
  date,
  aircraft: 'T1',
  from: 'HOM',
  stops: [{ place, drums }],
  to: 'HOM',
});

/** NOR needs eight drums by day 4, and loses a flight in two in the afternoon. */
const built = (handPlan: readonly StandingFlight[], changes: Partial<Scenario> = {}) => {
  const scenario = tinyTerritory({
    handPlan,
    caches: [tinyCache('NOR', { capacityDrums: 20 })],
    helicopterTasks: [tinyTask('2031-03-06', 'NOR', 1800)],
    weather: [{ place: 'NOR', morningCancel: 0.2, afternoonCancel: 0.5 }],
    ...changes,
  });
  const made = buildProblem(scenario, 'minimum');
  return { made, plan: planFromFlights(made, handPlan) };
};
const daysOf = (plan: Plan) => plan.trips.map(({ day }) => day).sort();
const never = () => false;

describe('a steadier plan for the same money', () => {
  const apart = [flight('F1', '2031-03-03', 4), flight('F2', '2031-03-05', 4)];

  it('flies what must all arrive in one half day, whose weather hits it once', () => {
    const { made, plan } = built(apart);
    const steady = steadyPlan(made, plan, never);
    expect(daysOf(plan)).toEqual([0, 2]);
    expect(new Set(daysOf(steady)).size).toBe(1);
    expect(fragilityOf(made)(plan)).toBeCloseTo(1 - 0.8 * 0.8, 9);
    expect(fragilityOf(made)(steady)).toBeCloseTo(0.2, 9);
  });

  it('breaks no rule and costs no more', () => {
    const { made, plan } = built(apart);
    const steady = steadyPlan(made, plan, never);
    const money = (of: Plan) => costOf(made.problem, of).travel + costOf(made.problem, of).packs;
    expect(checkPlan(made.problem, steady).faults).toEqual([]);
    expect(money(steady)).toBe(money(plan));
    expect(costOf(made.problem, steady).belowMinimum).toBe(costOf(made.problem, plan).belowMinimum);
  });

  it('stays as it is where no weather can hurt it', () => {
    const { made, plan } = built(apart, { weather: [] });
    expect(steadyPlan(made, plan, never)).toBe(plan);
  });

  it('stays as it is once the time is up', () => {
    const { made, plan } = built(apart);
    expect(steadyPlan(made, plan, () => true)).toBe(plan);
  });
});
