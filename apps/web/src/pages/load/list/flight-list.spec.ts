import { expect, it } from 'vitest';
import { withLoad } from './flight-list.js';

const flight = (id: string, date: string, departs: string, state = 'offered') => ({
  ...{ id, date, departs, state, version: 1, needsDecision: null, aircraft: 'B1', pilot: null },
  ...{ fromPlace: 'XALD', toPlace: 'XALD', stops: [{ place: 'XLOR', drums: 6 }] },
});

it('flights to load stand in the order in which they take off, whatever their numbers; declined ones are not there', () => {
  const flights = [
    flight('F01', '2027-06-15', '11:41'),
    flight('F02', '2027-06-15', '07:00'),
    flight('F03', '2027-06-14', '16:00'),
    flight('F04', '2027-06-14', '06:00', 'declined'),
  ];
  expect(withLoad(flights).map(({ id }) => id)).toEqual(['F03', 'F02', 'F01']);
});
