import { describe, expect, it } from 'vitest';
import { calendarOf, territoryTime } from './clock.js';

describe('the calendar of the territory', () => {
  const { today, time, day, date, when, span } = calendarOf(
    new Date('2027-06-15T01:30:00Z'),
    'America/Anchorage',
  );

  it('has its own day and time, eight hours behind Greenwich in June', () => {
    expect([today, time('2027-06-15T14:52:00Z')]).toEqual(['2027-06-14', '06:52']);
  });

  it('leaves a day without a time where it is', () => {
    expect([day('2027-06-15'), date('2027-06-15')]).toEqual(['Tue 15', 'Tue 15 June 2027']);
  });

  it('names the day where it was another one', () => {
    expect([when('2027-06-14T22:52:00Z'), when('2027-06-13T22:52:00Z')]).toEqual(['14:52', 'Sun 14:52']);
  });

  it('names both months of days that lie in two', () => {
    expect([span('2027-06-14', '2027-06-27'), span('2026-11-30', '2026-12-06')]).toEqual([
      'Mon 14 to 27 June 2027',
      'Mon 30 November to 6 December 2026',
    ]);
  });

  it('writes midnight as 00:00', () => {
    expect(time('2027-06-15T08:00:00Z')).toBe('00:00');
  });
});

it('a moment is read by the clock as it was set then, however it has been set since', () => {
  const settings = [
    { setAt: '2026-11-30T10:00:00Z', startsAt: '2027-06-14T06:00:00Z' },
    { setAt: '2026-11-30T11:00:00Z', startsAt: '2027-06-15T06:53:00Z' },
    { setAt: '2026-11-30T12:00:00Z', startsAt: null },
  ];
  const read = (at: string) => territoryTime(settings, at).toISOString().slice(0, 16);
  expect(['09:50', '10:10', '11:10', '12:10'].map((clock) => read(`2026-11-30T${clock}:00Z`))).toEqual([
    '2026-11-30T09:50',
    '2027-06-14T06:10',
    '2027-06-15T07:03',
    '2026-11-30T12:10',
  ]);
});
