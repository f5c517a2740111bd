import { describe, expect, it } from 'vitest';
import type { Bar } from '../bar-read.js';
import { loadWords } from '../legs/bar-scale.js';
import { type BookedLoad, bookedLoadPath, countOf } from './booked-read.js';
import { followsWords, landingWords, shownWords, standWords } from './booked-words.js';

const load = (changes: Partial<BookedLoad> = {}): BookedLoad => ({
  asked: { place: 'XHAS', drums: 3 },
  planned: null,
  drawn: 3,
  why: null,
  planningKg: 180,
  notKnown: [],
  legs: [],
  landings: [],
  stand: { base: 'XMER', free: 24, take: ['0523', '0524', '0525'], toFill: 0 },
  cost: { fuel: 147_000, handling: 2_700, total: 149_700, perLitre: 249.5 },
  caches: [
    {
      place: 'XHAS',
      minimumLitres: 600,
      withIt: { lowestLitres: 1090 },
      without: { lowestLitres: 800 },
    },
  ],
  faults: [],
  instead: [],
  ...changes,
});
const of = (drums: number) => ({ place: 'XHAS', drums });

describe('a flight that flies anyway', () => {
  it('says what its bars show: what is booked, and the drums that are asked at the planning weight', () => {
    expect(shownWords(load({ asked: of(0), drawn: 0 }))).toBe(
      'Booked, no drum on it yet: the bars show what is booked on it',
    );
    expect(shownWords(load())).toBe(
      'Booked, no drum on it yet: the bars show 3 drums at 180 kg each beside what is booked',
    );
  });

  it('draws no drums that stand nowhere aboard, and says so', () => {
    expect(shownWords(load({ asked: of(50) }))).toBe(
      'Booked, no drum on it yet: of 50 drums only 3 can go; the bars show 3 drums at 180 kg each beside what is booked',
    );
    expect(shownWords(load({ asked: of(2), drawn: 0 }))).toBe(
      'Booked, no drum on it yet: 2 drums do not go on it as booked, and none is drawn; the bars show what is booked on it',
    );
    expect(shownWords(load({ asked: of(1), drawn: 0 }))).toContain('1 drum does not go on it as booked');
  });

  it('counts its passengers, in one block or each in a seat', () => {
    const aboard = (...names: readonly string[]) =>
      loadWords(
        { drums: 0, load: names.map((name) => ({ name, isDrum: false })) } as unknown as Bar,
        'planned',
      );
    expect(aboard('4 passengers', 'freight')).toBe('4 passengers, freight');
    expect(aboard('passenger 1', 'passenger 2')).toBe('2 passengers');
    expect(aboard('1 passenger')).toBe('1 passenger');
  });

  it('says at each landing how many may come off', () => {
    expect(landingWords({ place: 'XHAS', drums: 3, by: '' })).toBe('XHAS, up to 3 drums');
    expect(landingWords({ place: 'XISK', drums: 0, by: '' })).toBe('XISK, none');
  });
});

describe('what follows from drums on it', () => {
  it('is which drums go and how many stay, the levels of the cache, and a cost without the flight', () => {
    expect(followsWords(load(), 'cr')).toEqual([
      '24 fit drums stand free at XMER: 0523, 0524, 0525 go, the oldest first; 21 stay free.',
      'XHAS is lowest at 1,090 L with them, 800 L without; minimum 600 L.',
      '1,497 cr, 2.50 cr/L: fuel 1,470 cr, handling 27 cr, flight nothing, as it flies anyway.',
    ]);
  });

  it('is what has to be filled first, where too few stand there', () => {
    const stand = { base: 'XMER', free: 1, take: ['0523'], toFill: 2 };
    expect(standWords(load({ stand }))).toBe(
      '1 fit drum stands free at XMER: 0523 goes, the oldest first; 0 stay free. 2 drums are still to be filled.',
    );
    expect(standWords(load({ stand: { ...stand, free: 0, take: [], toFill: 3 } }))).toBe(
      '0 fit drums stand free at XMER. 3 drums are still to be filled.',
    );
    expect(standWords(load({ asked: of(0) }))).toBe('24 fit drums stand free at XMER.');
  });

  it('is no drum that goes where they are refused', () => {
    const faults = [{ path: '', problem: 'XHAS accepts 6,900 lb landing.', remedy: '' }];
    expect(standWords(load({ faults }))).toBe('24 fit drums stand free at XMER.');
  });
});

describe('what is asked', () => {
  it('is left to the server until somebody chooses; what is no number asks for none', () => {
    expect(bookedLoadPath('X3', { approval: '' })).toBe('/api/booked-flights/X3/load');
    expect(bookedLoadPath('X3', { place: 'XHAS', drums: '2', approval: 'CA 17' })).toBe(
      '/api/booked-flights/X3/load?place=XHAS&drums=2&approval=CA+17',
    );
    expect(bookedLoadPath('X3', { drums: '2.5', approval: '' })).toBe('/api/booked-flights/X3/load?drums=0');
    expect(['3', '0', '', '2.5', '-1', '101'].map(countOf)).toEqual([3, 0, null, null, null, null]);
  });
});
