import { describe, expect, it } from 'vitest';
import type { Scenario, StandingFlight } from '../scenario.js';
import { tinyTerritory } from '../tiny-territory.js';
import { buildProblem } from './build-problem.js';
import { planFromFlights } from './plan-from-flights.js';

const flight = (changes: Partial<StandingFlight> = {}): StandingFlight => ({
  id: 'F1',
  state: 'offered',
  date: '2031-03-04',
  aircraft: 'T1',
  from: 'HOM',
  stops: [{ place: 'NOR', drums: 3 }],
  to: 'HOM',
  ...changes,
});

const planOf = (handPlan: readonly StandingFlight[], changes: Partial<Scenario> = {}) => {
  const built = buildProblem(tinyTerritory({ handPlan, ...changes }), 'hand plan');
  return { ...built, plan: planFromFlights(built, handPlan) };
};

describe('flights made by hand as a plan', () => {
  it('keep aircraft, day, stops and drums, and get a pilot who is fit', () => {
    const { plan, problem } = planOf([flight()]);
    const [trip] = plan.trips;
    expect(trip).toMatchObject({ vehicle: 0, day: 1, drops: [3], crew: 0 });
    expect(problem.routes[trip!.route]!.stops).toEqual([1]);
  });

  it('fly a round that no pool would hold', () => {
    const stops = ['NOR', 'SOU'].map((place) => ({ place, drums: 1 }));
    const { plan, problem } = planOf([flight({ stops })]);
    expect(planOf([]).problem.routes.filter((route) => route.stops.length > 1)).toEqual([]);
    expect(problem.routes[plan.trips[0]!.route]!.stops).toEqual([1, 2]);
  });

  it('land once at each place', () => {
    const stops = ['NOR', 'NOR'].map((place) => ({ place, drums: 1 }));
    expect(() => planOf([flight({ stops })])).toThrow('Flight F1 over HOM-NOR-NOR-HOM is no route');
  });

  it('have no pilot where nobody has the hours', () => {
    const many = Array.from({ length: 8 }, (_, i) => flight({ id: `F${i}` }));
    expect(planOf(many).plan.trips.map(({ crew }) => crew)).toEqual(many.map(() => -1));
  });

  it('leave out frozen flights, which the problem holds as constants, and days outside the plan', () => {
    const flights = [flight({ state: 'approved' })];
    const handPlan = [flight(), flight({ id: 'F2', date: '2031-03-20' })];
    expect(planOf(handPlan, { flights }).plan.trips).toEqual([]);
  });
});
