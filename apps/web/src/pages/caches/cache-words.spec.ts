import { describe, expect, it } from 'vitest';
import { countAgainstBook } from '../../counting/count-words.js';
import { coverInShort, coverWords, finding, levelAhead, lowestWords } from './cache-words.js';
import { cacheAt, countOf, dayName, falling, levels } from './testing/example-caches.js';

describe('what is said of a cache', () => {
  it('the worst that lies ahead comes before an old count', () => {
    expect(levelAhead(cacheAt('XMAR', { projections: falling, stock: countOf(254) }), dayName)).toEqual({
      level: 'below',
      words: 'Below, day 16',
    });
    expect(levelAhead(cacheAt('XKNA', { stock: countOf(254) }), dayName)).toEqual({
      level: 'unknown',
      words: 'Count 10 days old',
    });
  });

  it('days of cover say of which moment and at which draw, and why a cache runs out before', () => {
    const noDeliveries = levels([2200, 1405, -55, -320], {
      belowMinimumDay: 2,
      belowCriticalDay: 2,
      runOutDay: 2,
    });
    const lorn = cacheAt('XLOR', { daysOfCover: 10.6, projections: { ...falling, noDeliveries } });
    expect(coverWords(lorn, dayName)).toBe(
      'Without deliveries: below minimum day 15, below critical day 15, run out day 15. 10.6 days of cover: 2,200 L now at the mean draw of 3 days, 208 L a day; the draws come early, so it runs out before.',
    );
    expect(coverWords(cacheAt('XBIR', { daysOfCover: 12 }), dayName)).toBe(
      'Without deliveries it stays above its minimum. 12.0 days of cover: 600 L now at the mean draw of 3 days, 50 L a day.',
    );
    expect(coverWords(cacheAt('XBIR', { daysOfCover: null }), dayName)).toContain('Nothing is drawn.');
    // Beside "Critical, Tue 15" a mean is not called cover.
    const inShort = [lorn, cacheAt('XBIR', { daysOfCover: 12 }), cacheAt('XBIR', { daysOfCover: null })];
    expect(inShort.map(coverInShort)).toEqual(['10.6 days, mean draw', '12.0 days of cover', 'no draws']);
  });

  it('the finding of a graph names the lowest level, its day and what happens without deliveries', () => {
    const cache = cacheAt('XMAR', { projections: falling });
    expect(finding(cache, dayName)).toBe(
      'XMAR: lowest 375 L day 16, minimum 400 L. Without deliveries it stays above its minimum.',
    );
  });

  it('no cache holds less than nothing: it runs out, and is so much short', () => {
    const short = levels([600, -40, -1515], { belowMinimumDay: 1, belowCriticalDay: 1, runOutDay: 1 });
    expect(lowestWords(short, dayName)).toBe('runs out day 14, 1,515 L short');
    expect(lowestWords(levels([600, -40], { runOutDay: 1 }), dayName)).toBe('runs out day 14, 40 L short');
    expect(lowestWords(levels([600, 0], { runOutDay: 1 }), dayName)).toBe('lowest 0 L day 14');
  });

  it('a cache that is below now and filled today says both levels', () => {
    expect(lowestWords(levels([720, 1800, 1400]), dayName)).toBe('720 L now, then lowest 1,400 L day 15');
  });

  it('a dip outside the tolerance opens a case before it is sent; one inside agrees', () => {
    expect(countAgainstBook(2150, 2400, 48)).toMatch(
      /^250 L short of the book of 2,400 L, 48 L allowed: a difference case opens, and the projection uses 2,150 L/,
    );
    expect(countAgainstBook(2385, 2400, 48)).toBe('15 L under the book of 2,400 L, 48 L allowed: agrees.');
  });
});
