import { expect, it } from 'vitest';
import { drumsLanded } from './drums-landed.js';

const flight = (date: string, ...stops: readonly (readonly [string, number])[]) => ({
  date,
  stops: stops.map(([place, drums]) => ({ place, drums })),
});

it('drums landed: of all flights of a day together, each place for itself; a stop without drums is none', () => {
  const flights = [
    flight('2027-06-14', ['XLOR', 4], ['XGAN', 0]),
    flight('2027-06-15', ['XLOR', 6]),
    flight('2027-06-14', ['XGAN', 2], ['XLOR', 3]),
  ];
  expect(drumsLanded(flights)).toEqual([
    { date: '2027-06-14', place: 'XLOR', drums: 7 },
    { date: '2027-06-15', place: 'XLOR', drums: 6 },
    { date: '2027-06-14', place: 'XGAN', drums: 2 },
  ]);
});
