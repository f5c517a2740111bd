import { describe, expect, it } from 'vitest';
import type { Scenario, StandingFlight } from '../scenario.js';
import { tinyTask, tinyTerritory } from '../tiny-territory.js';
import { oneWindow } from './one-window.js';

const today = tinyTerritory().firstDay;
const flight = (id: string, place: string, changes: Partial<StandingFlight> = {}): StandingFlight => ({
  id,
  state: 'offered',
  date: today,
  aircraft: 'T1',
  from: 'HOM',
  stops: [{ place, drums: 1 }],
  to: 'HOM',
  departs: '08:00',
  ...changes,
});
const windowOf = (changes: Partial<Scenario>) => oneWindow(tinyTerritory(changes));

describe('if only one window opens today', () => {
  // NOR opens with 800 L, SOU with 600 L, minimum 400 L: from the second of five days on NOR is 100 L short, SOU 20 L.
  const helicopterTasks = [tinyTask('2031-03-04', 'NOR', 500), tinyTask('2031-03-04', 'SOU', 220)];
  const flights = [flight('F1', 'SOU'), flight('F2', 'NOR'), flight('F3', 'NOR', { date: '2031-03-04' })];

  it('the flight that avoids most harm by the hour comes first; other days are left alone', () => {
    const ranked = windowOf({ helicopterTasks, flights: flights.slice(0, 2) });
    expect(ranked.map((each) => each.flight)).toEqual(['F2', 'F1']);
    expect(ranked[0]).toMatchObject({ drums: 1, protects: { place: 'NOR', date: '2031-03-04' } });
    expect(ranked.map((each) => each.harmAvoided)).toEqual([400, 80]);
    expect(windowOf({ helicopterTasks, flights }).map((each) => each.flight)).not.toContain('F3');
  });

  it('counts the odds of the half day in', () => {
    const weather = [{ place: 'NOR', morningCancel: 0.95, afternoonCancel: 0 }];
    const [first, second] = windowOf({ helicopterTasks, weather, flights: flights.slice(0, 2) });
    expect(first!.flight).toBe('F1');
    expect(second!.chance).toBeCloseTo(0.05, 12);
    expect(second!.harmPerHour).toBeCloseTo((second!.harmAvoided * second!.chance) / second!.blockHours, 9);
  });

  it('where nothing falls short nothing is avoided, and a flight that has left is not asked about', () => {
    expect(windowOf({ helicopterTasks: [], flights: flights.slice(0, 1) })).toMatchObject([
      { harmAvoided: 0, protects: null },
    ]);
    expect(windowOf({ helicopterTasks, flights: [flight('F1', 'NOR', { state: 'away' })] })).toEqual([]);
  });
});
