import { litres } from '@drumline/units';
import { expect, it } from 'vitest';
import { cachesBelowCritical, cachesBelowMinimum } from './caches-below.js';

const dates = ['2031-03-03', '2031-03-04', '2031-03-05'];
const cache = (place: string, belowCriticalDay: number | null, usable: readonly number[]) => ({
  place,
  minimumLitres: litres(400),
  criticalLitres: litres(200),
  usableLitres: usable.map(litres),
  belowMinimumDay: firstBelow(usable, 400),
  belowCriticalDay,
});
const firstBelow = (usable: readonly number[], limit: number): number | null => {
  const day = usable.findIndex((level) => level < limit);
  return day < 0 ? null : day;
};

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

it('lists what is below minimum now or in the offered days and not below critical, and when it is back', () => {
  const caches = [
    cache('XLOR', null, [300, 300, 300, 300]),
    cache('XFAL', null, [600, 300, 400, 600]),
    cache('XGAN', null, [400, 400, 400, 300]),
    cache('XKNA', 2, [300, 300, 100, 100]),
  ];
  expect(cachesBelowMinimum(caches, { dates, offeredDays: 2 })).toEqual([
    { place: 'XLOR', date: null, litres: 300, minimumLitres: 400, backOn: null },
    { place: 'XFAL', date: '2031-03-03', litres: 300, minimumLitres: 400, backOn: '2031-03-04' },
  ]);
});
