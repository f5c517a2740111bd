import { daylight } from '@drumline/network';
import { hours, kilograms } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import type { Scenario, StandingFlight } from '../scenario.js';
import { tinyTerritory } from '../tiny-territory.js';
import { buildProblem } from './build-problem.js';

const freeHours = (changes: Partial<Scenario> = {}) =>
  buildProblem(tinyTerritory(changes), 'minimum').problem.vehicles[0]!.dutyHours;
const { policy } = tinyTerritory();
const longDay = { ...policy, flyingDay: { ...policy.flyingDay, lastLanding: '23:00' } };

const flight = (state: StandingFlight['state']): StandingFlight => ({
  id: 'F1',
  state,
  date: '2031-03-03',
  aircraft: 'T1',
  from: 'HOM',
  stops: [{ place: 'NOR', drums: 4 }],
  to: 'HOM',
});

describe('hours of an aircraft', () => {
  it('run from the first departure to the last landing', () => {
    expect(freeHours()).toEqual([10, 10, 10, 10, 10]);
  });

  it('end at sunset less the margin where that is earlier', () => {
    const scenario = tinyTerritory({ policy: longDay });
    const light = daylight(scenario.places[0]!, scenario.firstDay, scenario.timeZone)!;
    const dusk = light.until - policy.flyingDay.daylightMarginMinutes;
    expect(freeHours({ policy: longDay })[0]).toBeCloseTo((dusk - 7 * 60) / 60, 9);
  });

  it('are none on absent and no-flying days', () => {
    const aircraft = [
      {
        tail: 'T1',
        type: 'T',
        home: 'HOM',
        absences: [{ from: '2031-03-04', until: '2031-03-05', reason: 'check' }],
      },
    ];
    expect(freeHours({ aircraft, noFlyingDays: ['2031-03-07'] })).toEqual([10, 0, 0, 10, 0]);
  });

  it('are less by what booked flights hold', () => {
    const bookedFlights: Scenario['bookedFlights'] = [
      {
        id: 'X',
        date: '2031-03-04',
        aircraft: 'T1',
        configuration: 'drums',
        purpose: 'mail',
        legs: mailLegs,
        heldHours: hours(2.5),
      },
    ];
    expect(freeHours({ bookedFlights })).toEqual([10, 7.5, 10, 10, 10]);
  });

  it('frozen flights: hold their duty hours on their day', () => {
    const onDay = 50 / 125 + 0.05 + 0.5;
    expect(freeHours({ flights: [flight('approved')] })[0]).toBeCloseTo(10 - 2 * onDay, 9);
  });

  it('on the day of the picture only what is left of it counts, and nothing on past days', () => {
    expect(freeHours({ asOf: '2031-03-04T09:00Z' })).toEqual([0, 8, 10, 10, 10]);
    expect(freeHours({ asOf: '2031-03-03T12:00Z', flights: [flight('reported')] })[0]).toBe(5);
  });
});

const mailLegs = [
  { from: 'HOM', to: 'NOR', passengers: 0, passengersKg: kilograms(0), freightKg: kilograms(100) },
  { from: 'NOR', to: 'HOM', passengers: 0, passengersKg: kilograms(0), freightKg: kilograms(0) },
];
