import { describe, expect, it } from 'vitest';
import type { Flight } from '../flights/flight.table.js';
import { crewsNotHeard } from './crews-not-heard.js';
import { decideBy } from './decide-by.js';

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
  it('half an hour before it leaves today, and 17:00 the day before for a later day', () => {
    const by = (date: string) => decideBy({ date, departs: '08:00' }, '2027-06-14', 'Etc/GMT');
    expect(by('2027-06-14')).toBe('2027-06-14T07:30:00Z');
    expect(by('2027-06-16')).toBe('2027-06-15T17:00:00Z');
  });
});
