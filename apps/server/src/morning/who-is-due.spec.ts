import { describe, expect, it } from 'vitest';
import type { Flight } from '../flights/store/flight.table.js';
import { crewsNotHeard } from './crews-not-heard.js';
import { decideBy } from './decide-by.js';
import { firstTakeOff } from './first-take-off.js';
import { isToDecide } from './to-decide.js';

const moment = { asOf: '2027-06-14T08:30:00Z', timeZone: 'Etc/GMT' };
const flight = (id: string, state: Flight['state'], departs: string) =>
  ({ id, state, departs, date: '2027-06-14', pilot: 'FW1', landedAt: null }) as Flight;

describe('whose word is due', () => {
  it('a given flight that should be off and is not loaded, the longest due first; not one that leaves later', () => {
    const flights = [
      flight('F02', 'loaded', '08:00'),
      flight('F01', 'given', '07:00'),
      flight('F03', 'given', '09:00'),
      flight('F04', 'approved', '07:00'),
    ];
    expect(crewsNotHeard(flights, [], moment).map((each) => [each.flight, each.what])).toEqual([
      ['F01', 'not loaded'],
      ['F02', 'not off'],
    ]);
  });
});

describe('the latest moment to decide', () => {
  const by = (date: string, askedAt: string) =>
    decideBy({ date, departs: '08:00', askedAt }, '2027-06-14', 'Etc/GMT');

  it('half an hour before it leaves today, and 17:00 the day before for a later day', () => {
    expect(by('2027-06-14', '2027-06-14T06:00:00Z')).toBe('2027-06-14T07:30:00Z');
    expect(by('2027-06-16', '2027-06-14T06:00:00Z')).toBe('2027-06-15T17:00:00Z');
  });

  it('never before it was offered: the next of these moments, at last when it leaves', () => {
    expect(by('2027-06-15', '2027-06-14T18:00:00Z')).toBe('2027-06-15T07:30:00Z');
    expect(by('2027-06-14', '2027-06-14T07:53:00Z')).toBe('2027-06-14T08:00:00Z');
  });
});

describe('the first take-off', () => {
  const scenario = { asOf: '2027-06-14T07:03:00Z', firstDay: '2027-06-14', timeZone: 'Etc/GMT' } as const;
  const flights = [
    { ...flight('F03', 'approved', '09:00'), aircraft: 'A2' },
    { ...flight('F01', 'given', '07:00'), aircraft: 'A1' },
    { ...flight('F02', 'declined', '08:00'), aircraft: 'A1' },
  ];

  it('is the first that is still to come: not one that should be off, not one that was declined', () => {
    expect(firstTakeOff({ flights, scenario })).toEqual({
      ...{ at: '09:00', flight: 'F03', aircraft: 'A2', lateMinutes: 0 },
    });
    const before = { ...scenario, asOf: '2027-06-14T07:00:00Z' } as const;
    expect(firstTakeOff({ flights, scenario: before })).toMatchObject({ flight: 'F01' });
    const evening = { ...scenario, asOf: '2027-06-14T16:50:00Z' } as const;
    expect(firstTakeOff({ flights: flights.slice(1), scenario: evening })).toBeNull();
  });

  it('past its hour and not given it is still the first, and late', () => {
    const approved = [{ ...flight('F06', 'approved', '06:51'), aircraft: 'A1' }, ...flights];
    expect(firstTakeOff({ flights: approved, scenario })).toEqual({
      ...{ at: '06:51', flight: 'F06', aircraft: 'A1', lateMinutes: 12 },
    });
  });
});

describe('what is to be decided', () => {
  const at = (asOf: string, state: Flight['state']) =>
    isToDecide({ ...flight('F06', state, '07:00'), needsDecision: null }, { asOf, timeZone: 'Etc/GMT' });

  it('an approved flight that should be off and was never given, from its hour on until it is given', () => {
    expect(at('2027-06-14T07:00:00Z', 'approved')).toBe(false);
    expect(at('2027-06-14T07:12:00Z', 'approved')).toBe(true);
    expect(at('2027-06-14T07:12:00Z', 'given')).toBe(false);
    expect(at('2027-06-14T07:12:00Z', 'called off')).toBe(false);
  });
});
