import type { PlannedFlight } from '@drumline/planning';
import { describe, expect, it } from 'vitest';
import type { Flight } from '../flights/store/flight.table.js';
import { type Accepted, standAsAccepted } from './accepted-flights.js';

const planned = (id: string, rest: object = {}) =>
  ({
    id,
    kind: 'positioning',
    state: 'offered',
    date: '2031-03-03',
    aircraft: 'T1',
    from: 'HOM',
    to: 'HOM',
    stops: [{ place: 'NOR', drums: 2 }],
    drums: 2,
    ...rest,
  }) as unknown as PlannedFlight;

const plan: Accepted = {
  firstDay: '2031-03-03',
  offeredDays: 3,
  flights: [planned('P1'), planned('F9', { state: 'approved' }), planned('P2', { date: '2031-03-07' })],
  numbers: [{ planned: 'P1', flight: 'F10' }],
};

const flight = (id: string, rest: object = {}): Flight =>
  ({
    id,
    state: 'offered',
    date: '2031-03-03',
    aircraft: 'T1',
    fromPlace: 'HOM',
    toPlace: 'HOM',
    stops: [{ place: 'NOR', drums: 2 }],
    departs: '07:00',
    pilot: 'P1',
    ...rest,
  }) as unknown as Flight;

const stand = (...flights: readonly Flight[]) => standAsAccepted(plan, flights);

describe('the flights that stand are those of the accepted plan', () => {
  it('by the numbers they were given, approved or flown since, at another time, with another pilot; ideas are not looked for', () => {
    expect(stand(flight('F10'), flight('F9'))).toBe(true);
    expect(stand(flight('F10', { state: 'closed', departs: '09:00', pilot: 'P2' }), flight('F9'))).toBe(true);
  });

  it.each([
    ['called off', [flight('F10'), flight('F9', { state: 'called off' })]],
    ['declined', [flight('F10', { state: 'declined' }), flight('F9')]],
    ['turned back', [flight('F10'), flight('F9', { state: 'turned back' })]],
    ['with other drums', [flight('F10', { stops: [{ place: 'NOR', drums: 1 }] }), flight('F9')]],
    ['on another day', [flight('F10', { date: '2031-03-04' }), flight('F9')]],
    ['one more', [flight('F10'), flight('F9'), flight('X1')]],
    ['gone', [flight('F10')]],
  ])('not with one %s', (_, flights) => {
    expect(stand(...flights)).toBe(false);
  });
});
