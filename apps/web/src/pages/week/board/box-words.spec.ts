import { describe, expect, it } from 'vitest';
import { exampleBooked, exampleFlight } from '../week-example.js';
import {
  bandWords,
  bindingMark,
  bindingShort,
  bindingWords,
  bookedTime,
  bookedWords,
  isFrozen,
  lineOf,
  markKey,
} from './box-words.js';

describe('a box', () => {
  it('has a firmer line the firmer the flight', () => {
    const lines = ['declined', 'offered', 'approved', 'given', 'loaded', 'away', 'home', 'closed'];
    expect(lines.map((state) => lineOf(exampleFlight({ state })))).toEqual([
      'off',
      'offered',
      'approved',
      'given',
      'away',
      'away',
      'flown',
      'flown',
    ]);
    expect(lineOf(exampleFlight({ kind: 'booked' }))).toBe('booked');
  });

  it('is frozen once approved, and offered when it is held in place', () => {
    expect(isFrozen(exampleFlight())).toBe(false);
    expect(isFrozen(exampleFlight({ heldInPlace: true }))).toBe(true);
    expect(isFrozen(exampleFlight({ state: 'approved' }))).toBe(true);
    expect(isFrozen(exampleFlight({ state: 'called off' }))).toBe(false);
  });

  it('names what binds, and where fewer drums go than possible how many more would go', () => {
    const fewer = exampleFlight({ drums: 3, drumsPossible: 4 });
    expect(bindingWords(exampleFlight())).toBe('binds: XNOR landing');
    expect(bindingWords(fewer)).toBe('1 more would go');
    expect(bindingShort(fewer)).toEqual(['', '1 more would go']);
    expect(bindingMark(fewer)).toBe('');
    expect(bindingShort(exampleFlight())).toEqual(['binds: strip ', 'landing']);
    const weight = { name: 'max landing weight', place: null };
    expect(bindingShort(exampleFlight({ binding: weight }))).toEqual(['binds: ', 'landing weight']);
    expect(bindingWords(exampleFlight({ binding: null, drums: 0 }))).toBe('no drums');
  });

  it('of two weeks at once has a mark for the limit, and the key says which marks are there', () => {
    const positions = exampleFlight({ binding: { name: 'drum positions', place: null } });
    const balance = exampleFlight({ binding: { name: 'balance', place: null } });
    expect([exampleFlight(), positions, balance].map(bindingMark)).toEqual(['ldg', 'pos', 'balance']);
    expect(markKey([exampleFlight(), positions, exampleFlight(), balance])).toEqual([
      'ldg strip landing',
      'pos positions',
    ]);
  });

  it('of a flight that flies anyway says when it is off and how long it takes, or that the hour is not set', () => {
    expect(bookedTime(exampleBooked({ departs: '07:30', heldHours: 2 }))).toBe('off 07:30, takes 2.0 h');
    expect(bookedTime(exampleBooked())).toBe('takes 1.6 h, hour not set');
  });

  it('of a flight that flies anyway says that it needs a decision where it cannot fly as booked', () => {
    const needsDecision = 'X1, Mon 3 Mar, XSOU: XSOU is reported closed.';
    expect(bandWords(exampleBooked({ needsDecision }))).toBe('Needs a decision');
    expect(bandWords(exampleBooked())).toBeNull();
  });

  it('of a flight that flies anyway says what it could take', () => {
    expect(bookedWords(exampleBooked())).toEqual(['mail', 'spare 3 drums']);
    expect(bookedWords(exampleBooked({ passengers: 4, spareDrums: 0 }))).toEqual([
      '4 passengers',
      'no drums',
    ]);
    expect(bookedWords(exampleBooked({ spareDrums: null }))).toEqual(['mail', '']);
  });
});

describe('a box', () => {
  it('asks of a flight whose day is over whether it flew', () => {
    expect(bandWords(exampleFlight({ state: 'approved', unheard: true }))).toBe('Did it fly?');
    expect(bandWords(exampleFlight({ unheard: true }))).toBe('Its day is over');
    expect(bandWords(exampleFlight({ needsDecision: 'soft' }))).toBe('Needs a decision');
    expect(bandWords(exampleFlight())).toBeNull();
  });
});
