import { describe, expect, it } from 'vitest';
import type { BookedFlight, Scenario } from '../scenario.js';
import { tinyTerritory } from '../tiny-territory.js';
import { bookedFaults } from './booked-faults.js';
import { day1, day2, flight } from './testing/one-flight.js';

const leg = { passengers: 2, passengersKg: 180, freightKg: 0 };
const booked = {
  id: 'X1',
  date: day1,
  aircraft: 'T1',
  purpose: 'people to the north camp',
  configuration: tinyTerritory().aircraftTypes[0]!.configurations[0]!.id,
  heldHours: 2,
  legs: [
    { from: 'HOM', to: 'NOR', ...leg },
    { from: 'NOR', to: 'HOM', ...leg },
  ],
} as unknown as BookedFlight;
const wrong = (changes: Partial<Scenario> = {}, one: Partial<BookedFlight> = {}) => {
  const scenario = tinyTerritory({ bookedFlights: [{ ...booked, ...one }], ...changes });
  return [...bookedFaults(scenario)].map(([id, { what }]) => `${id}: ${what}`);
};
const closed = {
  surfaceReports: [{ place: 'NOR', state: 'closed' as const, at: '2031-03-03T04:00Z', by: 'helper' }],
};

describe('a booked flight that carries no drum', () => {
  it('stands while nothing forbids it', () => {
    expect(wrong()).toEqual([]);
  });

  it('to a strip that is reported closed cannot be flown; on the days after it can', () => {
    expect(wrong(closed)).toEqual(['X1: NOR is reported closed.']);
    expect(wrong(closed, { date: day2 })).toEqual([]);
  });

  it('along a way that a hazard notice closes cannot be flown', () => {
    const notice = {
      id: 'N1',
      places: ['NOR'],
      from: '2031-03-03T10:00Z',
      until: '2031-03-03T11:00Z',
      source: 'fire service',
      text: 'smoke',
    };
    expect(wrong({ notices: [notice] })).toEqual([
      'X1: The leg is closed by notice N1 (fire service): smoke',
    ]);
  });

  it('of an aircraft that is away cannot be flown', () => {
    const [only] = tinyTerritory().aircraft;
    const absences = [{ from: day1, until: day1, reason: 'inspection' }];
    expect(wrong({ aircraft: [{ ...only!, absences }] })).toEqual(['X1: T1 is away: inspection.']);
  });

  it('is not asked about where it carries drums: then it is a flight like the others, with a mark of its own', () => {
    const flights = [flight({ id: 'X1', stops: [{ place: 'NOR', drums: 1 }] })];
    expect(wrong({ ...closed, flights })).toEqual([]);
  });
});
