import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clockTimeAt } from './calendar.js';
import { epochMinutes, inLocalTime, instantAt, instantOf, localDate, localTime } from './local-time.js';
import { minutes } from './quantity.js';

describe('time zone', () => {
  it('time zone: instants are UTC, days and clock times are local', () => {
    expect(localDate('2027-03-01T23:30Z', 'Etc/GMT')).toBe('2027-03-01');
    expect(localDate('2027-03-01T23:30Z', 'Etc/GMT-1')).toBe('2027-03-02');
    expect(localTime('2027-03-01T23:30:59Z', 'Etc/GMT-1')).toBe('00:30');
    expect(localTime('2027-03-02T00:00Z', 'Etc/GMT')).toBe('00:00');
    expect(instantOf('2027-03-02', '07:00', 'Etc/GMT+9')).toBe('2027-03-02T16:00:00Z');
  });

  it('time zone: the instants in a text are read by the clock and the calendar on the wall', () => {
    const here = { asOf: '2027-06-14T12:00Z', timeZone: 'Etc/GMT-8' };
    expect(inLocalTime('F06: loaded at 2027-06-14T05:40Z, before base knew.', here)).toBe(
      'F06: loaded at Mon 14, 13:40, before base knew.',
    );
    expect(inLocalTime('at 2027-06-14T17:05:09.250Z but received at 2027-06-14T17:05:10Z', here)).toBe(
      'at Tue 15, 01:05 but received at Tue 15, 01:05',
    );
    expect(inLocalTime('No instant: 2027-06-14, drum 0447, 2027-13-14T05:40Z.', here)).toBe(
      'No instant: 2027-06-14, drum 0447, 2027-13-14T05:40Z.',
    );
  });

  it('time zone: far from today the month and the year are said: the clock of a phone may be years ahead', () => {
    const here = { asOf: '2027-06-14T12:00Z', timeZone: 'Etc/GMT-8' };
    expect(inLocalTime('at 2027-06-28T05:40Z', here)).toBe('at Mon 28, 13:40');
    expect(inLocalTime('at 2027-06-29T05:40Z', here)).toBe('at Tue 29 June 2027, 13:40');
    expect(inLocalTime('at 2032-06-14T05:40Z', here)).toBe('at Mon 14 June 2032, 13:40');
  });

  // The clocks of this zone go forward at 01:00 UTC on 28 March 2027 and back at 01:00 UTC on 31 October 2027.
  it('time zone: a skipped time moves forward, a time shown twice is the first', () => {
    expect(instantOf('2027-03-28', '02:30', 'Europe/Oslo')).toBe('2027-03-28T01:30:00Z');
    expect(localTime('2027-03-28T01:30:00Z', 'Europe/Oslo')).toBe('03:30');
    expect(instantOf('2027-10-31', '02:30', 'Europe/Oslo')).toBe('2027-10-31T00:30:00Z');
    expect(instantOf('2027-03-28', '12:00', 'Europe/Oslo')).toBe('2027-03-28T10:00:00Z');
    expect(instantOf('2027-10-31', '03:00', 'Europe/Oslo')).toBe('2027-10-31T02:00:00Z');
  });

  it('time zone: the clock shows the time of the instant of that time', () => {
    const zones = ['Etc/GMT', 'Asia/Kathmandu', 'Pacific/Apia', 'America/Anchorage', 'Antarctica/Troll'];
    fc.assert(
      fc.property(
        fc.constantFrom(...zones),
        fc.integer({ min: 20_000, max: 22_000 }),
        fc.integer({ min: 4 * 60, max: 1439 }),
        (zone, day, minute) => {
          const date = instantAt(minutes(day * 1440)).slice(0, 10);
          const instant = instantOf(date, clockTimeAt(minutes(minute)), zone);
          expect(localDate(instant, zone)).toBe(date);
          expect(localTime(instant, zone)).toBe(clockTimeAt(minutes(minute)));
        },
      ),
    );
  });

  it('instants with and without seconds compare as minutes', () => {
    expect(epochMinutes('2027-03-01T10:00:30Z') - epochMinutes('2027-03-01T10:00Z')).toBe(0.5);
    expect(instantAt(epochMinutes('2027-03-01T10:00:30Z'))).toBe('2027-03-01T10:00:30Z');
  });

  it('an unknown time zone is refused', () => {
    expect(() => localDate('2027-03-01T10:00Z', 'Nowhere/Atall')).toThrow(RangeError);
  });
});
