import { litres, litresPerDay } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { dailyUse, daysOfCover } from './daily-use.js';

const dates = ['2027-03-01', '2027-03-02', '2027-03-03', '2027-03-04'];

describe('daily use', () => {
  it('counts days without a draw, adds the draws of a day, and leaves out other days', () => {
    const draws = [
      { date: '2027-03-01', litres: litres(100) },
      { date: '2027-03-01', litres: litres(300) },
      { date: '2027-03-03', litres: litres(400) },
      { date: '2027-03-05', litres: litres(9000) },
    ];
    const use = dailyUse(draws, dates);
    expect(use.mean).toBe(200);
    expect(use.deviation).toBeCloseTo(Math.sqrt((4 * 200 ** 2) / 3), 9);
  });

  it('is nothing where nothing is drawn, and has no deviation of one day', () => {
    expect(dailyUse([], dates)).toEqual({ mean: 0, deviation: 0 });
    expect(dailyUse([], [])).toEqual({ mean: 0, deviation: 0 });
    expect(dailyUse([{ date: '2027-03-01', litres: litres(180) }], ['2027-03-01'])).toEqual({
      mean: 180,
      deviation: 0,
    });
  });
});

describe('days of cover', () => {
  it('are usable litres over the mean use', () => {
    expect(daysOfCover(litres(1000), litresPerDay(400))).toBe(2.5);
    expect(daysOfCover(litres(-300), litresPerDay(400))).toBe(0);
    expect(daysOfCover(litres(1000), litresPerDay(0))).toBeNull();
  });
});
