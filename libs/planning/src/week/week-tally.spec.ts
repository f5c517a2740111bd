import { describe, expect, it } from 'vitest';
import type { Scenario, StandingFlight } from '../scenario.js';
import { tinyTask, tinyTerritory } from '../tiny-territory.js';
import { weekTally } from './week-tally.js';

const toNor = (changes: Partial<StandingFlight> = {}): StandingFlight => ({
  id: 'F1',
  state: 'offered',
  date: '2031-03-04',
  aircraft: 'T1',
  from: 'HOM',
  stops: [{ place: 'NOR', drums: 2 }],
  to: 'HOM',
  departs: '08:00',
  ...changes,
});
const tallyOf = (changes: Partial<Scenario>) => weekTally(tinyTerritory(changes));

describe('what lies ahead', () => {
  it('counts shortage in litre-days, and names the first day and the cache', () => {
    // NOR opens with 800 L and gives 500 L on day 2: 300 L of 400 L on two of the three days for which flights are offered.
    const helicopterTasks = [tinyTask('2031-03-04', 'NOR', 500)];
    const none = { litreDays: 0, first: null };
    expect(tallyOf({ helicopterTasks })).toMatchObject({
      belowMinimum: { litreDays: 200, first: { place: 'NOR', date: '2031-03-04' } },
      belowCritical: none,
    });
    expect(tallyOf({ helicopterTasks, flights: [toNor()] }).belowMinimum).toEqual(none);
  });

  it('of one day the cache that is shortest', () => {
    const helicopterTasks = [tinyTask('2031-03-04', 'NOR', 500), tinyTask('2031-03-04', 'SOU', 550)];
    expect(tallyOf({ helicopterTasks }).belowMinimum.first).toEqual({ place: 'SOU', date: '2031-03-04' });
  });

  it('expects drums by the odds of the half day; what has landed has landed', () => {
    const weather = [{ place: 'NOR', morningCancel: 0.1, afternoonCancel: 0.5 }];
    const flights = [toNor(), toNor({ id: 'F2', departs: '13:00' })];
    expect(tallyOf({ weather, flights })).toMatchObject({ drums: 4, expectedDrums: 2 * 0.9 + 2 * 0.5 });
    const home = [toNor({ state: 'home', departs: '13:00', date: '2031-03-03' })];
    expect(tallyOf({ weather, flights: home }).expectedDrums).toBe(2);
  });

  it('says what the bases give', () => {
    expect(tallyOf({ flights: [toNor()] }).bases).toMatchObject([{ place: 'HOM', drumsTaken: 2 }]);
  });
});
