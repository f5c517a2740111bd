import { costOf, type Plan, type Trip } from '@drumline/routing';
import { hours, kilograms, minutes } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { checkFlights } from '../check/check-flights.js';
import { buildProblem } from '../problem/build-problem.js';
import type { Scenario } from '../scenario.js';
import { tinyTerritory } from '../tiny-territory.js';
import { fitSchedule } from './fit-schedule.js';
import { plannedTrips } from './planned-trips.js';

const legs = [
  { from: 'HOM', to: 'NOR', passengers: 2, passengersKg: kilograms(180), freightKg: kilograms(0) },
  { from: 'NOR', to: 'HOM', passengers: 2, passengersKg: kilograms(180), freightKg: kilograms(0) },
];
/** A crew change at eleven, held for four hours, cuts the day of the only aeroplane into two short pieces. */
const noonFlight = {
  id: 'X1',
  date: '2031-03-03',
  aircraft: 'T1',
  configuration: 'drums',
  purpose: 'crew change',
  legs,
  heldHours: hours(4),
  departs: '11:00',
};
const slowTurns = tinyTerritory().aircraftTypes.map((type) => ({ ...type, turnRoundMinutes: minutes(120) }));

const planOn = (changes: Partial<Scenario>, ...trips: readonly Partial<Trip>[]) => {
  const built = buildProblem(tinyTerritory(changes), 'minimum');
  const { problem, map } = built;
  const nor = map.storeOf.get('NOR')!;
  const route = problem.routes.findIndex(({ stops }) => stops.length === 1 && stops[0] === nor);
  const plan: Plan = {
    trips: trips.map((trip) => ({ vehicle: 0, day: 0, route, drops: [2], crew: 0, ...trip })),
    bookedDrops: problem.booked.map(({ stops }) => stops.map(() => 0)),
    bookedCrews: problem.booked.map(() => 0),
  };
  return { built, plan };
};
const daysOf = (plan: Plan): readonly number[] => plan.trips.map(({ day }) => day);

describe('a plan whose every day has a schedule', () => {
  it('is left alone where it has one already', () => {
    const { built, plan } = planOn({}, {}, { day: 1 });
    expect(fitSchedule(built, plan)).toBe(plan);
  });

  it('a flight that finds no gap beside a booked flight at its time goes on another day', () => {
    const { built, plan } = planOn({ bookedFlights: [noonFlight], aircraftTypes: slowTurns }, {});
    const fitted = fitSchedule(built, plan);
    expect(daysOf(fitted)).toEqual([1]);
    expect(checkFlights(built.scenario, plannedTrips(built, fitted))).toEqual([]);
  });

  it('is left out where no other day takes it', () => {
    const noFlyingDays = ['2031-03-04', '2031-03-05', '2031-03-06', '2031-03-07'];
    const { built, plan } = planOn(
      { bookedFlights: [noonFlight], aircraftTypes: slowTurns, noFlyingDays },
      {},
    );
    const fitted = fitSchedule(built, plan);
    expect(fitted.trips).toEqual([]);
    expect(costOf(built.problem, fitted).total).toBeGreaterThan(costOf(built.problem, plan).total);
  });
});
