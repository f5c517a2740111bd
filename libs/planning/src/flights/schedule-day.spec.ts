import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type DayFlight, scheduleDay } from './schedule-day.js';

const flight = (
  id: string,
  aircraft: string,
  pilot: string | null,
  more: Partial<DayFlight> = {},
): DayFlight => ({
  id,
  aircraft,
  pilot,
  earliest: 360,
  latest: 1200,
  heldMinutes: 120,
  urgency: 0,
  ...more,
});

const departuresOf = (flights: readonly DayFlight[]): ReadonlyMap<string, number> => {
  const { departures, clashes } = scheduleDay(flights);
  expect(clashes).toEqual([]);
  return departures;
};

describe('the departures of a day', () => {
  it('half days: the most urgent flight of an aircraft leaves first, the next when it is back', () => {
    const times = departuresOf([
      flight('later', 'A1', null, { urgency: 9 }),
      flight('urgent', 'A1', null, { urgency: 1 }),
    ]);
    expect(times.get('urgent')).toBe(360);
    expect(times.get('later')).toBe(480);
  });

  it('a flight keeps the hour that people know, and a new one takes what is left of the day', () => {
    const known = flight('known', 'A1', null, { urgency: 5, before: 420 });
    const urgent = flight('new', 'A1', null, { urgency: 1 });
    const times = departuresOf([known, urgent]);
    expect(times.get('known')).toBe(420);
    expect(times.get('new')).toBe(540);
  });

  it('an hour that leaves another flight no place is given up, and so is one outside the window', () => {
    const known = flight('known', 'A1', null, { before: 420 });
    const morningOnly = flight('morning only', 'A1', null, { latest: 400, urgency: 9 });
    expect(departuresOf([known, morningOnly]).get('morning only')).toBeLessThanOrEqual(400);
    expect(departuresOf([flight('dark', 'A1', null, { before: 300 })]).get('dark')).toBe(360);
  });

  it('crew hours: a pilot may fly two aircraft in a day, not at once', () => {
    const times = departuresOf([flight('one', 'A1', 'P1'), flight('two', 'A2', 'P1')]);
    expect(Math.abs(times.get('one')! - times.get('two')!)).toBe(120);
  });

  it('a booked flight keeps its time and a short flight goes before it', () => {
    const times = departuresOf([
      flight('booked', 'A1', 'P1', { earliest: 480, latest: 480 }),
      flight('short', 'A1', 'P1'),
      flight('long', 'A1', 'P1', { heldMinutes: 180 }),
    ]);
    expect(times.get('booked')).toBe(480);
    expect(times.get('short')).toBe(360);
    expect(times.get('long')).toBe(600);
  });

  it('an urgent flight gives way where another could not be flown at all', () => {
    const times = departuresOf([
      flight('urgent', 'A1', 'P1', { urgency: 1, latest: 600 }),
      flight('must be early', 'A2', 'P1', { urgency: 5, latest: 420 }),
    ]);
    expect(times.get('must be early')).toBe(360);
    expect(times.get('urgent')).toBe(480);
  });

  it('a day that cannot hold its flights has no schedule, and the flights are named', () => {
    const schedule = scheduleDay([
      flight('one', 'A1', null, { latest: 400 }),
      flight('two', 'A1', null, { latest: 400 }),
      flight('free', 'A2', null),
    ]);
    expect(schedule.clashes).toMatchObject([{ flights: ['one', 'two'] }]);
    expect([...schedule.departures]).toEqual([['free', 360]]);
  });

  it('a flight longer than the daylight is named alone', () => {
    const schedule = scheduleDay([flight('too long', 'A1', null, { latest: 300 })]);
    expect(schedule.clashes).toMatchObject([{ flights: ['too long'] }]);
  });

  it('given times that clash stand, and the others are placed around them', () => {
    const { departures, clashes } = scheduleDay([
      flight('booked', 'A1', null, { earliest: 400, latest: 400 }),
      flight('settled', 'A1', null, { earliest: 460, latest: 460 }),
      flight('free', 'A1', null),
    ]);
    expect(clashes).toMatchObject([{ flights: ['booked', 'settled'] }]);
    expect(departures.get('free')).toBe(580);
  });
});

describe('laws of a schedule', () => {
  const anyFlight = (index: number) =>
    fc
      .record({
        aircraft: fc.constantFrom('A1', 'A2', 'A3'),
        pilot: fc.constantFrom('P1', 'P2', null),
        heldMinutes: fc.integer({ min: 30, max: 240 }),
        urgency: fc.integer({ min: 0, max: 5 }),
        latest: fc.integer({ min: 360, max: 900 }),
      })
      .map((more) => flight(`F${index}`, more.aircraft, more.pilot, more));
  const anyDay = fc
    .integer({ min: 1, max: 6 })
    .chain((count) => fc.tuple(...Array.from({ length: count }, (_, index) => anyFlight(index))));
  const overlap = (one: DayFlight, other: DayFlight, at: ReadonlyMap<string, number>): boolean =>
    at.get(one.id)! < at.get(other.id)! + other.heldMinutes &&
    at.get(other.id)! < at.get(one.id)! + one.heldMinutes;
  const clash = (one: DayFlight, other: DayFlight): boolean =>
    one.aircraft === other.aircraft || (one.pilot !== null && one.pilot === other.pilot);

  it('no aircraft and no pilot is in two places, and every window is kept', () => {
    fc.assert(
      fc.property(anyDay, (flights) => {
        const { departures: at, clashes } = scheduleDay(flights);
        if (clashes.length > 0) return;
        for (const [index, one] of flights.entries()) {
          expect(at.get(one.id)!).toBeGreaterThanOrEqual(one.earliest);
          expect(at.get(one.id)!).toBeLessThanOrEqual(one.latest);
          for (const other of flights.slice(index + 1)) {
            if (clash(one, other)) expect(overlap(one, other, at)).toBe(false);
          }
        }
      }),
    );
  });

  it('where some order of the flights fits, a schedule is found', () => {
    const fitsInSomeOrder = (flights: readonly DayFlight[]): boolean => {
      const place = (at: Map<string, number>, left: readonly DayFlight[]): boolean =>
        left.length === 0 ||
        left.some((next) => {
          const busy = flights.filter((other) => at.has(other.id) && clash(next, other));
          const start = Math.max(
            next.earliest,
            ...busy.map((other) => at.get(other.id)! + other.heldMinutes),
          );
          if (start > next.latest) return false;
          return place(
            new Map([...at, [next.id, start]]),
            left.filter((other) => other !== next),
          );
        });
      return place(new Map(), flights);
    };
    fc.assert(
      fc.property(anyDay, (flights) => {
        expect(scheduleDay(flights).clashes.length === 0).toBe(fitsInSomeOrder(flights));
      }),
    );
  });
});
