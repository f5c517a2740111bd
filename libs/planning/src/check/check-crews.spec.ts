import { hours, kilograms } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import type { Scenario } from '../scenario.js';
import { day1, day2, flight, found, tiny, withPilot, withStrip } from './testing/one-flight.js';

describe('crews', () => {
  it('crew fit: rated, on duty, cleared for the class', () => {
    expect(found(withPilot({ types: ['U'] }), flight())[0]).toContain(
      'P1 is not rated for type T. No pilot may fly it',
    );
    expect(found(withPilot({ daysOff: [day1] }), flight())[0]).toContain('P1 is off on Mon 3 Mar');
    expect(found(withPilot({ stripClasses: [1] }), flight())[0]).toContain(
      'P1 is not cleared for NOR (class 2)',
    );
  });

  it('crew fit: the last landing at that very strip is within the days on the date of the flight', () => {
    const hard = withStrip({ stripClass: 3 });
    const landed = (date: string) =>
      withPilot({ stripClasses: [1, 2, 3], lastLandings: [{ place: 'NOR', date }] });
    expect(found({ ...hard, ...landed('2030-12-03') }, flight())).toEqual([]);
    expect(found({ ...hard, ...landed('2030-12-02') }, flight())[0]).toContain(
      'P1 last landed at NOR 91 days before; 90 are allowed',
    );
    expect(found({ ...hard, ...withPilot({ stripClasses: [1, 2, 3] }) }, flight())[0]).toContain(
      'P1 has no recorded landing at NOR',
    );
  });

  it('crew fit: a flight without a named pilot needs at least one who may fly it', () => {
    const { pilot: _, ...nobody } = flight();
    expect(found({}, nobody)).toEqual([]);
    expect(found(withPilot({ daysOff: [day1] }), nobody)[0]).toContain('No pilot may fly it. P1 is off');
  });

  it('crew fit: a booked flight that nobody may fly is found, with or without drums', () => {
    const legs = [
      { from: 'HOM', to: 'NOR', passengers: 2, passengersKg: kilograms(180), freightKg: kilograms(0) },
      { from: 'NOR', to: 'HOM', passengers: 0, passengersKg: kilograms(0), freightKg: kilograms(0) },
    ];
    const crewChange = {
      id: 'X1',
      date: day1,
      aircraft: 'T1',
      configuration: 'drums',
      purpose: 'crew',
      legs,
    };
    const bookedFlights = [{ ...crewChange, heldHours: hours(2) }];
    expect(found({ bookedFlights, ...withPilot({ daysOff: [day1] }) })[0]).toContain(
      'X1, Mon 3 Mar: No pilot may fly it',
    );
  });

  it('crew hours: flight hours a day, duty hours a day, and flight hours in any 7 days with those before the plan', () => {
    // One flight is 2 x (0.4 h + 3 min) = 0.9 h of block and 1.9 h of duty.
    const rules = (changes: Partial<Scenario['policy']['crew']>) => ({
      policy: { ...tiny.policy, crew: { ...tiny.policy.crew, ...changes } },
    });
    const twice = [flight(), flight({ id: 'F2', stops: [{ place: 'NOR', drums: 1 }] })];
    expect(found(rules({ flightHoursPerDay: hours(1.7) }), ...twice)[0]).toContain(
      'P1 would have 1.80 h of flight with F1 and F2; 1.70 h are allowed. Give 0.10 h of it to another pilot or day.',
    );
    expect(found(rules({ dutyHoursPerDay: hours(3.7) }), ...twice)[0]).toContain('3.80 h of duty');
    const flown = withPilot({ flown: [{ date: '2031-02-25', blockHours: hours(31.5) }] });
    expect(found(flown, flight())[0]).toContain(
      'the 7 days to Mon 3 Mar: P1 would have 32.40 h of flight with F1',
    );
    expect(found(flown, flight({ date: day2 }))).toEqual([]);
  });
});
