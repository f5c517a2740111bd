import { expect, it } from 'vitest';
import type { StandingFlight } from '../scenario.js';
import { tinyTerritory } from '../tiny-territory.js';
import { ifDeclinedByFlight, nothingIfDeclined } from './if-declined.js';

const flight = (id: string, place: string): StandingFlight => ({
  id,
  state: 'offered',
  date: '2031-03-03',
  aircraft: 'T1',
  from: 'HOM',
  stops: [{ place, drums: 2 }],
  to: 'HOM',
});
const ifDeclined = ifDeclinedByFlight(tinyTerritory({ helicopterTasks: [], flights: [flight('F2', 'SOU')] }));

it('each flight has what follows without it, beside all the others', () => {
  // NOR opens with 800 L and gives 500 L on day 2; SOU opens with 600 L and gives 300 L on day 3; each keeps 400 L.
  const flights = [flight('F1', 'NOR'), flight('F2', 'SOU')];
  const of = ifDeclinedByFlight(tinyTerritory({ flights }));
  expect([of('F1').protects, of('F2').protects]).toEqual([
    { place: 'NOR', date: '2031-03-04', level: 'below minimum' },
    { place: 'SOU', date: '2031-03-05', level: 'below minimum' },
  ]);
  expect(of('F1').ifDeclined).toBe('Without it NOR falls below minimum on Tue 4 Mar: 300 L of 400 L.');
});

it('of a flight that nothing waits for, or that is no part of the days ahead, nothing falls short', () => {
  expect(ifDeclined('F2').protects).toBeNull();
  expect(ifDeclined('F9')).toBe(nothingIfDeclined);
});
