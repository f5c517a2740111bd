import { kilograms, pounds } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { gatherPassengers } from './gather-passengers.js';

const aboard = (name: string, place: string | null, lb: number, legs = [0, 0]) => ({
  name,
  place,
  kg: kilograms(lb / 2),
  lb: pounds(lb),
  firstLeg: legs[0]!,
  lastLeg: legs[1]!,
});

describe('passengers on a sheet', () => {
  it('of the same legs are one row, with their seats and their whole pounds added; freight stays as it is', () => {
    const rows = gatherPassengers([
      aboard('passenger 1', 'S1L', 198),
      aboard('freight', 'NET1', 300),
      aboard('passenger 2', 'S1R', 199),
      aboard('freight', 'NET2', 20),
      aboard('passenger 1', 'S1L', 180, [1, 1]),
    ]);
    expect(rows.map(({ name, place, lb }) => [name, place, lb])).toEqual([
      ['2 passengers', 'S1L S1R', 397],
      ['freight', 'NET1', 300],
      ['freight', 'NET2', 20],
      ['1 passenger', 'S1L', 180],
    ]);
  });

  it('of whom one has no seat have none together, so that nobody takes the balance for known', () => {
    const [row] = gatherPassengers([aboard('passenger 1', 'S1L', 198), aboard('passenger 2', null, 198)]);
    expect(row!.place).toBeNull();
  });
});
