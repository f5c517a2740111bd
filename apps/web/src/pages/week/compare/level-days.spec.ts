import { describe, expect, it } from 'vitest';
import { levelScale } from '../../../ui/index.js';
import { changedCaches, type LevelDays, levelFinding, lineEnds } from './level-days.js';

const dates = ['2027-06-14', '2027-06-15', '2027-06-16'];
const day = (date: string) => `June ${date.slice(8)}`;
const cache = (place: string, before: readonly number[], after: readonly number[]): LevelDays => ({
  place,
  dates,
  before: [...before],
  after: [...after],
  minimumLitres: 1200,
  criticalLitres: 600,
});
// product.md, T1: the lowest of LOR falls from 1,885 to 1,485 L.
const lorn = cache('XLOR', [2200, 2085, 1885, 2285], [2200, 2085, 1485, 1885]);
const kept = cache('XESK', [1400, 1400, 1400, 1400], [1400, 1400, 1400, 1400]);
const late = cache('XGAN', [900, 900, 900, 1500], [900, 900, 1500, 1500]);

const beside = (caches: readonly LevelDays[]) => ({
  levels: caches.map(({ place, before, after }) => ({ place, dates, before, after })),
  lowest: caches.map(({ place, minimumLitres, criticalLitres }) => ({
    place,
    minimumLitres,
    criticalLitres,
    beforeLitres: 0,
    afterLitres: 0,
    withIdeas: { beforeLitres: 0, afterLitres: 0 },
  })),
});

describe('the level of a cache day by day', () => {
  it('is of the cache that changes most, in litres and days; one that stays is not in the list', () => {
    const changed = changedCaches(beside([late, kept, lorn]));
    expect(changed.map(({ place }) => place)).toEqual(['XLOR', 'XGAN']);
    expect(changed[0]).toMatchObject({ minimumLitres: 1200, criticalLitres: 600, before: lorn.before });
    expect(changedCaches(beside([kept]))).toEqual([]);
  });

  it('is said in one sentence: the lowest of either plan with its day, the opening not counted', () => {
    expect(levelFinding(lorn, day)).toBe(
      'XLOR at the end of a day: standing at its lowest 1,885 L on June 15, proposed 1,485 L on June 15; minimum 1,200 L, critical 600 L.',
    );
    expect(levelFinding(late, day)).toContain('proposed 900 L on June 14');
  });

  it('has words at the end of each line that do not stand in each other, nor under the foot', () => {
    const scale = levelScale({ width: 560, height: 200, words: 124 }, 3, 3000);
    const together = cache('XNOR', [1200, 1200, 1200, 1200], [1200, 1200, 1200, 1190]);
    for (const each of [lorn, together, cache('XSOU', [0, 0, 0, 0], [0, 0, 0, -200])]) {
      const ends = lineEnds(each, scale);
      expect(ends).toHaveLength(4);
      ends.slice(1).forEach(({ y }, at) => {
        expect(y - ends[at]!.y).toBeGreaterThanOrEqual(14);
      });
      expect(ends.at(-1)!.y).toBeLessThanOrEqual(scale.bottom + 4);
    }
    expect(lineEnds(lorn, scale).find(({ isProposed }) => isProposed)!.words).toBe('proposed 1,885 L');
  });
});
