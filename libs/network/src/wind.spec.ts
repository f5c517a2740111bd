import { knots } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { windTable } from './wind.js';

describe('planned wind', () => {
  const wind = windTable([
    { from: 'ASH', to: 'BEK', componentKt: knots(-10) },
    { from: 'ASH', to: 'BEK', dates: ['2027-03-02', '2027-03-04'], componentKt: knots(0) },
  ]);

  it('a wind without dates holds every day, a wind given for the day wins', () => {
    expect(wind('ASH', 'BEK', '2027-03-01')).toBe(-10);
    expect(wind('ASH', 'BEK', '2027-03-02')).toBe(0);
    expect(wind('ASH', 'BEK', '2027-03-03')).toBe(-10);
    expect(wind('ASH', 'BEK', '2027-03-04')).toBe(0);
  });

  it('still air: no wind is given for the way back', () => {
    expect(wind('BEK', 'ASH', '2027-03-01')).toBeNull();
  });
});
