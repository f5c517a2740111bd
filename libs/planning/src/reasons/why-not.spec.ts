import { hours, minutes } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import type { Scenario, StandingFlight } from '../scenario.js';
import { tinyTerritory } from '../tiny-territory.js';
import { type FlightQuestion, whyNot } from './why-not.js';

const planned: StandingFlight = {
  id: 'P01',
  state: 'offered',
  date: '2031-03-03',
  aircraft: 'T1',
  from: 'HOM',
  stops: [{ place: 'NOR', drums: 4 }],
  to: 'HOM',
  departs: '07:00',
  pilot: 'P1',
};
const asked: FlightQuestion = { aircraft: 'T1', date: '2031-03-03', stops: [{ place: 'SOU' }] };
const ask = (changes: Partial<Scenario>, question: Partial<FlightQuestion> = {}) =>
  whyNot(tinyTerritory(changes), [planned], { ...asked, ...question }, 'minimum');

describe('why not this flight?', () => {
  it('nothing forbids it: what it would carry, cost and be for', () => {
    const answer = ask({});
    if (answer.verdict !== 'allowed') throw new Error(answer.fault.what);
    expect(answer.flight.stops).toEqual([{ place: 'SOU', drums: 4 }]);
    // 1.38 h at 900.00, two landings at 5.00; 800 L at 1.50; four drums at 9.00.
    expect(answer.described.cost).toMatchObject({ flight: 125_200, fuel: 120_000, handling: 3_600 });
    expect(answer.described.departs).toBe('08:54');
  });

  it('names the first broken rule and what would have to change', () => {
    const report = { place: 'SOU', state: 'soft' as const, at: '2031-03-03T04:00Z', by: 'helper' };
    const answer = ask({ surfaceReports: [report] }, { stops: [{ place: 'SOU', drums: 4 }] });
    // 4000 + 1587.3 + 720 ramp - 20 taxi - 212 trip = 6,075.3 lb; soft 6,800 - 900 = 5,900 lb.
    expect(answer).toMatchObject({
      verdict: 'breaks a rule',
      fault: { where: 'asked, Mon 3 Mar, HOM-SOU', mend: 'Unload 175 lb (1 drum).' },
    });
  });

  it('a soft strip is asked for with the drums that it takes', () => {
    const report = { place: 'SOU', state: 'soft' as const, at: '2031-03-03T04:00Z', by: 'helper' };
    expect(ask({ surfaceReports: [report] }).flight.stops).toEqual([{ place: 'SOU', drums: 3 }]);
  });

  it('a day already full of offered flights has no schedule for one more', () => {
    const { policy } = tinyTerritory();
    const flyingDay = { ...policy.flyingDay, lastLanding: '09:30', daylightMarginMinutes: minutes(30) };
    expect(ask({ policy: { ...policy, flyingDay } })).toMatchObject({
      verdict: 'breaks a rule',
      fault: { flights: ['P01', 'asked'] },
    });
  });

  it('the hours of the pilot it asks for count with those of the plan', () => {
    const { policy } = tinyTerritory();
    const crew = { ...policy.crew, flightHoursPerDay: hours(2) };
    const answer = ask({ policy: { ...policy, crew } }, { pilot: 'P1' });
    expect(answer).toMatchObject({ verdict: 'breaks a rule', fault: { where: 'P1, Mon 3 Mar' } });
  });

  it('says which aircraft there are when asked for another', () => {
    expect(() => ask({}, { aircraft: 'Z9' })).toThrow('There is no aircraft Z9; the scenario has T1.');
  });
});
