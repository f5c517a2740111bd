import { describe, expect, it } from 'vitest';
import { day1, day2, flight, found, tiny } from './testing/one-flight.js';

describe('days and places', () => {
  it('hazard notices: a named place is closed on the days of the notice', () => {
    const notices = [
      {
        id: 'N1',
        places: ['NOR'],
        from: '2031-03-03T10:00Z',
        until: '2031-03-03T11:00Z',
        source: 'fire service',
        text: 'smoke',
      },
    ];
    const faults = found({ notices }, flight());
    expect(faults).toHaveLength(2);
    expect(faults[0]).toContain('closed by notice N1 (fire service): smoke');
    expect(found({ notices }, flight({ date: day2 }))).toEqual([]);
  });

  it('a day without flying, and a day outside the plan', () => {
    expect(found({ noFlyingDays: [day1] }, flight())[0]).toContain('is a day without flying');
    expect(found({}, flight({ date: '2031-03-08' }))[0]).toContain('is not a day of the plan');
  });

  it('a type without a line in the strip table is not approved', () => {
    const stripLimits = tiny.stripLimits.filter(({ place }) => place !== 'NOR');
    expect(found({ stripLimits }, flight())[0]).toContain('Type T is not approved at NOR');
  });
});
