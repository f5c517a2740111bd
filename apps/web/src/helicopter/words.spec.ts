import type { Cache } from '@drumline/stock';
import type { IsoDate } from '@drumline/units';
import { expect, it } from 'vitest';
import { aheadWords } from './words.js';

const mar = { minimumLitres: 400, criticalLitres: 200 } as Cache;
const wed: IsoDate = '2027-06-16';
const thu: IsoDate = '2027-06-17';
const dayWords = (day: IsoDate): string => (day === wed ? 'Wed 16' : 'Thu 17');
const words = (belowMinimumOn: IsoDate | null, belowCriticalOn: IsoDate | null): string =>
  aheadWords(mar, { belowMinimumOn, belowCriticalOn }, dayWords);

it('where a cache leads names each level that it falls below, and which flights are counted', () => {
  expect(words(wed, thu)).toBe(
    'Below the minimum of 400 L at the end of Wed 16, below critical, 200 L, at the end of Thu 17; approved flights counted, not the offered ones.',
  );
  expect(words(wed, null)).toBe(
    'Below the minimum of 400 L at the end of Wed 16; approved flights counted, not the offered ones.',
  );
  expect(words(null, null)).toBe('Stays above the minimum of 400 L, approved flights counted.');
});
