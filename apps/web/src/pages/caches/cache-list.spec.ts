import { describe, expect, it } from 'vitest';
import { cacheAt, countOf, falling, levels, placesIn } from './testing/example-caches.js';

describe('which caches, in which order', () => {
  const caches = [
    cacheAt('XBIR', { daysOfCover: null, stock: countOf(2) }),
    cacheAt('XMAR', { daysOfCover: 15, projections: falling }),
    cacheAt('XLOR', { daysOfCover: 3, stock: countOf(254) }),
  ];

  it('the first day below critical first, then below minimum, then cover: cover for 15 days does not hide a fall', () => {
    const critical = {
      ...falling,
      offered: levels([600, 600, 100, 100], { belowCriticalDay: 2, belowMinimumDay: 2 }),
    };
    const all = [...caches, cacheAt('XKNA', { daysOfCover: 20, projections: critical })];
    expect(placesIn(all, { sort: 'first' })).toEqual(['XKNA', 'XMAR', 'XLOR', 'XBIR']);
  });

  it('least cover first, and last what nothing is drawn from', () =>
    expect(placesIn(caches, {})).toEqual(['XLOR', 'XMAR', 'XBIR']));

  it('by code, by room above the minimum, by age of the count with the uncounted first', () => {
    expect(placesIn(caches, { sort: 'name' })).toEqual(['XBIR', 'XLOR', 'XMAR']);
    expect(placesIn(caches, { sort: 'room' })[0]).toBe('XMAR');
    expect(placesIn(caches, { sort: 'count' })).toEqual(['XMAR', 'XLOR', 'XBIR']);
  });

  it('by name or code, below minimum ahead, an old count, a kind of place', () => {
    expect(placesIn(caches, { text: 'marrow' })).toEqual(['XMAR']);
    expect(placesIn(caches, { text: 'xl' })).toEqual(['XLOR']);
    expect(placesIn(caches, { only: 'below' })).toEqual(['XMAR']);
    expect(placesIn(caches, { only: 'old' })).toEqual(['XLOR', 'XMAR']);
    expect(placesIn(caches, { kind: 'pad' })).toEqual(['XMAR']);
  });
});
