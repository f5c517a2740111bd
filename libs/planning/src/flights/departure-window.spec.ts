import { minutes } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import type { Scenario } from '../scenario.js';
import { tinyPlace, tinyTerritory } from '../tiny-territory.js';
import { departureWindow } from './departure-window.js';

const [home, strip] = [tinyPlace('HOM', 60), tinyPlace('NOR', 60.83)];
const windowOf = (
  changes: Partial<Scenario>,
  date = '2031-03-04',
  more: { departs?: string; hasLeft?: boolean } = {},
) =>
  departureWindow(tinyTerritory(changes), {
    date,
    legs: [
      { from: home, to: strip, blockHours: 0.5 },
      { from: strip, to: home, blockHours: 0.5 },
    ],
    turnRoundMinutes: 30,
    hasLeft: false,
    ...more,
  });
const { policy } = tinyTerritory();
const flyingDay = (changes: Partial<Scenario['policy']['flyingDay']>) => ({
  policy: { ...policy, flyingDay: { ...policy.flyingDay, ...changes } },
});

describe('when a flight may depart', () => {
  it('from the first departure, to be down for the last time by the last landing', () => {
    // Away 30 + 30 + 30 min: down by 17:00 means off by 15:30.
    expect(windowOf({})).toEqual({ earliest: 420, latest: 930 });
  });

  it('no later than sunset less the margin at its last landing, where that comes first', () => {
    const late = windowOf(flyingDay({ lastLanding: '20:00' }));
    const later = windowOf(flyingDay({ lastLanding: '20:00', daylightMarginMinutes: minutes(0) }));
    expect(late.latest).toBeLessThan(1200 - 90);
    expect(later.latest - late.latest).toBe(30);
  });

  it('no earlier than sunrise at the base', () => {
    const early = windowOf(flyingDay({ firstDeparture: '03:00' }));
    expect(early.earliest).toBeGreaterThan(360);
    expect(early.earliest).toBeLessThan(450);
  });

  it('not at all where the sun stays down', () => {
    const winter = windowOf({ places: [], firstDay: '2031-12-20' }, '2031-12-21');
    const polar = departureWindow(tinyTerritory(), {
      date: '2031-12-21',
      legs: [{ from: tinyPlace('HOM', 80), to: tinyPlace('NOR', 80), blockHours: 0.5 }],
      turnRoundMinutes: 30,
      hasLeft: false,
    });
    expect(winter.latest).toBeGreaterThan(winter.earliest);
    expect(polar.latest).toBeLessThan(polar.earliest);
  });

  it('where there is no sunset the flying day alone counts', () => {
    const summer = departureWindow(tinyTerritory(flyingDay({ lastLanding: '23:00' })), {
      date: '2031-06-21',
      legs: [{ from: tinyPlace('HOM', 70), to: tinyPlace('NOR', 70), blockHours: 0.5 }],
      turnRoundMinutes: 30,
      hasLeft: false,
    });
    expect(summer).toEqual({ earliest: 420, latest: 23 * 60 - 30 });
  });

  it('not before the present hour, unless it has left', () => {
    const asOf = '2031-03-04T10:15Z';
    expect(windowOf({ asOf }).earliest).toBe(615);
    expect(windowOf({ asOf }, '2031-03-05').earliest).toBe(420);
    expect(windowOf({ asOf }, '2031-03-04', { hasLeft: true }).earliest).toBe(420);
  });

  it('a given time leaves no choice', () => {
    expect(windowOf({}, '2031-03-04', { departs: '09:40' })).toEqual({ earliest: 580, latest: 580 });
  });
});
