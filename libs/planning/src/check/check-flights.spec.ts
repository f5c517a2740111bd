import { describe, expect, it } from 'vitest';
import { flight, found } from './testing/one-flight.js';

describe('a flight within every rule', () => {
  it('has no fault', () => {
    expect(found({}, flight())).toEqual([]);
  });

  it('is found good over two stops as well', () => {
    const stops = [
      { place: 'NOR', drums: 2 },
      { place: 'SOU', drums: 2 },
    ];
    expect(found({}, flight({ stops }))).toEqual([]);
  });
});
