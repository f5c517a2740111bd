import type { Plan, Trip } from '@drumline/routing';
import { hours, kilograms } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { checkFlights } from '../check/check-flights.js';
import { buildProblem } from '../problem/build-problem.js';
import { planFromFlights } from '../problem/plan-from-flights.js';
import type { Scenario, StandingFlight } from '../scenario.js';
import { tinyTerritory } from '../tiny-territory.js';
import { plannedTrips } from './planned-trips.js';

const day1 = '2031-03-03';
const toNor = (changes: Partial<StandingFlight> = {}): StandingFlight => ({
  id: 'F1',
  state: 'offered',
  date: day1,
  aircraft: 'T1',
  from: 'HOM',
  stops: [{ place: 'NOR', drums: 2 }],
  to: 'HOM',
  ...changes,
});
const mail = {
  id: 'X1',
  date: day1,
  aircraft: 'T1',
  configuration: 'drums',
  purpose: 'mail',
  legs: [
    { from: 'HOM', to: 'NOR', passengers: 0, passengersKg: kilograms(0), freightKg: kilograms(50) },
    { from: 'NOR', to: 'HOM', passengers: 0, passengersKg: kilograms(0), freightKg: kilograms(0) },
  ],
  heldHours: hours(2),
};

const planned = (changes: Partial<Scenario>, ...trips: readonly Partial<Trip>[]) => {
  const built = buildProblem(tinyTerritory(changes), 'minimum');
  const nor = built.map.storeOf.get('NOR')!;
  const route = built.problem.routes.findIndex(({ stops }) => stops.length === 1 && stops[0] === nor);
  const plan: Plan = {
    trips: trips.map((trip) => ({ vehicle: 0, day: 0, route, drops: [2], crew: 0, ...trip })),
    bookedDrops: built.problem.booked.map(({ stops }) => stops.map(() => 1)),
    bookedCrews: built.problem.booked.map(() => 0),
  };
  return plannedTrips(built, plan);
};

describe('the flights of a routing plan', () => {
  it('new flights are numbered by day', () => {
    expect(planned({}, { day: 2 }, { day: 0 }).map(({ id, date, pilot }) => [id, date, pilot])).toEqual([
      ['P01', day1, 'P1'],
      ['P02', '2031-03-05', 'P1'],
    ]);
  });

  it('an offered flight that is planned again keeps its number, with its new drums', () => {
    const flights = planned({ flights: [toNor({ id: 'F7' })] }, { drops: [3] }, { day: 1 });
    expect(flights.map(({ id, stops }) => [id, stops[0]!.drums])).toEqual([
      ['F7', 3],
      ['P01', 2],
    ]);
  });

  it('of two flights alike on one day the unchanged one keeps its number, the other gets a new one', () => {
    const flights = planned({ flights: [toNor({ id: 'F12' })] }, { drops: [3] }, { drops: [2] });
    expect(flights.map(({ id, stops }) => [id, stops[0]!.drums]).sort()).toEqual([
      ['F12', 2],
      ['P01', 3],
    ]);
  });

  it('a flight moved to another day keeps its number, the nearest day first; on a day that is not offered it is an idea', () => {
    const standing = [toNor({ id: 'F7' }), toNor({ id: 'F8', date: '2031-03-04' })];
    const days = (...trips: readonly Partial<Trip>[]) =>
      planned({ flights: standing, offeredDays: 3 }, ...trips).map(({ id, date }) => [id, date]);
    expect(days({ day: 1 }, { day: 2 })).toEqual([
      ['F8', '2031-03-04'],
      ['F7', '2031-03-05'],
    ]);
    expect(days({ day: 2 })).toEqual([['F8', '2031-03-05']]);
    expect(
      planned({ flights: [toNor({ id: 'F7' })], offeredDays: 1 }, { day: 1 }).map(({ id }) => id),
    ).toEqual(['P01']);
  });

  it('a new number is never that of a flight that stands', () => {
    const flights = planned({ flights: [toNor({ id: 'P01', state: 'approved', pilot: 'P1' })] }, { day: 1 });
    expect(flights.map(({ id }) => id)).toEqual(['P01', 'P02']);
  });

  it('frozen flights: they stand as they are', () => {
    const frozen = toNor({ state: 'given', departs: '08:15', pilot: 'P1' });
    expect(planned({ flights: [frozen] })).toEqual([frozen]);
  });

  it('a booked flight keeps its number and takes the drums put on it', () => {
    expect(planned({ bookedFlights: [mail] })).toMatchObject([
      { id: 'X1', from: 'HOM', stops: [{ place: 'NOR', drums: 1 }], to: 'HOM', pilot: 'P1' },
    ]);
  });

  it('drums settled on a booked flight stay on it, and its aeroplane is held once', () => {
    const settled = toNor({ id: 'X1', state: 'approved', pilot: 'P1' });
    const flights = planned({ bookedFlights: [mail], flights: [settled] });
    expect(flights).toEqual([settled]);
    const hoursOf = (scenario: Partial<Scenario>) =>
      buildProblem(tinyTerritory(scenario), 'minimum').problem.vehicles[0]!.dutyHours[0]!;
    expect(hoursOf({ bookedFlights: [mail], flights: [settled] })).toBe(hoursOf({ bookedFlights: [mail] }));
    expect(checkFlights(tinyTerritory({ bookedFlights: [mail] }), flights)).toEqual([]);
  });

  it('a hand plan may put drums on a booked flight', () => {
    const handPlan = [toNor({ id: 'X1', stops: [{ place: 'NOR', drums: 3 }] }), toNor()];
    const built = buildProblem(tinyTerritory({ bookedFlights: [mail], handPlan }), 'hand plan');
    const plan = planFromFlights(built, handPlan);
    expect(plan.trips).toHaveLength(1);
    expect(plan.bookedDrops).toEqual([[3]]);
  });
});
