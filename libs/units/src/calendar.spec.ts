import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  addDays,
  clockTimeAt,
  dateWords,
  dayIndex,
  daysBetween,
  daysFrom,
  isValidDate,
  minutesOfDay,
} from './calendar.js';
import { minutes } from './quantity.js';

const day = fc
  .integer({ min: 0, max: 40_000 })
  .map((count) => new Date(count * 86_400_000).toISOString().slice(0, 10));

describe('calendar', () => {
  it('says a day with its year', () => {
    expect(dateWords('2028-03-01')).toBe('Wed 1 March 2028');
  });

  it('knows the days of the calendar', () => {
    expect(isValidDate('2028-02-29')).toBe(true);
    expect(isValidDate('2027-02-29')).toBe(false);
    expect(isValidDate('2027-13-01')).toBe(false);
    expect(isValidDate('2027-3-1')).toBe(false);
    expect(isValidDate('2027-03-01T00:00Z')).toBe(false);
    expect(isValidDate('')).toBe(false);
  });

  it('counts days over months, leap days and years', () => {
    expect(addDays('2027-12-31', 1)).toBe('2028-01-01');
    expect(addDays('2028-03-01', -1)).toBe('2028-02-29');
    expect(daysBetween('2027-03-01', '2028-03-01')).toBe(366);
    expect(daysFrom('2027-02-27', 3)).toEqual(['2027-02-27', '2027-02-28', '2027-03-01']);
  });

  it('days added are days between, and the index of the day', () => {
    fc.assert(
      fc.property(day, fc.integer({ min: -1000, max: 1000 }), (date, count) => {
        expect(daysBetween(date, addDays(date, count))).toBe(count);
        expect(dayIndex(date, addDays(date, count))).toBe(count);
      }),
    );
  });

  it('clock times are minutes of the day', () => {
    expect(minutesOfDay('01:30')).toBe(90);
    expect(clockTimeAt(minutes(90.9))).toBe('01:30');
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1439 }), (minute) => {
        expect(minutesOfDay(clockTimeAt(minutes(minute)))).toBe(minute);
      }),
    );
    expect(() => clockTimeAt(minutes(1440))).toThrow(RangeError);
    expect(() => clockTimeAt(minutes(-1))).toThrow(RangeError);
  });
});
