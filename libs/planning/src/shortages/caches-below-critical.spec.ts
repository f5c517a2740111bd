import { litres } from '@drumline/units';
import { expect, it } from 'vitest';
import { cachesBelowCritical } from './caches-below-critical.js';

const dates = ['2031-03-03', '2031-03-04', '2031-03-05'];
const cache = (place: string, belowCriticalDay: number | null, usable: readonly number[]) => ({
  place,
  criticalLitres: litres(200),
  usableLitres: usable.map(litres),
  belowCriticalDay,
});

it('lists what falls below critical in the offered days, the first day first, and nothing later', () => {
  const caches = [
    cache('XLOR', 2, [600, 300, -40, -40]),
    cache('XFAL', 3, [600, 600, 600, 100]),
    cache('XGAN', null, [600, 600, 600, 600]),
    cache('XKNA', 0, [150, 150, 100, 100]),
  ];
  expect(cachesBelowCritical(caches, { dates, offeredDays: 2 })).toEqual([
    { place: 'XKNA', date: null, litres: 150, criticalLitres: 200 },
    { place: 'XLOR', date: '2031-03-04', litres: -40, criticalLitres: 200 },
  ]);
});
