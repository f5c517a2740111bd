import { expect, it } from 'vitest';
import { touchedDays } from './touched-days.js';

const course = (usableLitres: readonly number[]) => ({
  minimumLitres: 400,
  criticalLitres: 200,
  levels: { usableLitres },
});

it('a task of day 3 touches MAR on day 3, and says where it leaves it lowest', () => {
  const rows = touchedDays({
    dates: ['2027-06-14', '2027-06-15', '2027-06-16', '2027-06-17'],
    items: [
      { place: 'XMAR', before: course([900, 600, 500, 375, 500]), after: course([900, 600, 500, 39, 164]) },
    ],
  });
  expect(rows).toEqual([
    {
      place: 'XMAR',
      date: '2027-06-16',
      before: 375,
      after: 39,
      words: 'below critical 200 L; before: below minimum 400 L',
    },
  ]);
});

it('a cache that stays as it is has no row', () => {
  expect(
    touchedDays({
      dates: ['2027-06-14'],
      items: [{ place: 'XMAR', before: course([9, 9]), after: course([9, 9]) }],
    }),
  ).toEqual([]);
});
