import { pounds } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { exampleRequest } from './example-flight.js';
import { relaxWords } from './relax.js';
import type { LegLimit } from './route-load.js';

const request = exampleRequest(['BASE', 'STRIP', 'BASE']);
const fuel = { fuelAtTakeoffLb: pounds(600), fuelAtLandingLb: pounds(430) };
const limit = (name: LegLimit['name'], drums: number): LegLimit => ({
  name,
  place: null,
  roomLb: pounds(drums * 400),
  drums,
});
const wordsOf = (drums: number, ...limits: readonly LegLimit[]) =>
  relaxWords(request, request.legs[0]!, limits, drums, fuel as Parameters<typeof relaxWords>[4]);

describe('what one more drum takes', () => {
  it('says which drum it is', () => {
    const drums = [0, 1, 2, 3, 7, 10, 11, 12, 17, 20, 21, 110];
    expect(drums.map((count) => wordsOf(count, limit('balance', count)).split(' drum ')[0])).toEqual([
      'A 1st',
      'A 2nd',
      'A 3rd',
      'A 4th',
      'An 8th',
      'An 11th',
      'A 12th',
      'A 13th',
      'An 18th',
      'A 21st',
      'A 22nd',
      'A 111th',
    ]);
  });

  it('a closed place is said plainly, and nothing beside it', () => {
    const closed = (place: string) => wordsOf(0, { ...limit('closed', 0), place }, limit('balance', 0));
    expect(closed('STRIP')).toBe('STRIP is closed: no drum can land there');
    expect(closed('BASE')).toBe('BASE is closed: no drum can go on from there');
  });

  it('names the two tightest of the limits in its way, and none that is not', () => {
    const words = wordsOf(
      4,
      limit('drum positions', 4),
      limit('balance', 4),
      limit('passengers aboard', 4),
      limit('max take-off weight', 5),
    );
    expect(words).toBe('A 5th drum takes a 5th standing place; and positions that balance with 5 drums');
  });
});
