import { describe, expect, it } from 'vitest';
import { kilograms, type Litres, litres, minus, plus, pounds, sum, times } from './quantity.js';

describe('arithmetic of quantities', () => {
  it('adds, takes away, multiplies and sums in one unit', () => {
    expect(plus(kilograms(164), kilograms(20))).toBe(184);
    expect(minus(pounds(6261), pounds(6250))).toBe(11);
    expect(times(litres(205), 4)).toBe(820);
    expect(sum([litres(205), litres(100), litres(50)])).toBe(355);
    expect(sum<Litres>([])).toBe(0);
  });

  it('refuses mixed units when it is compiled', () => {
    // @ts-expect-error kilograms and litres do not add up
    plus(kilograms(1), litres(2));
    // @ts-expect-error pounds cannot be taken from kilograms
    minus(kilograms(1), pounds(2));
    // @ts-expect-error a factor has no unit
    times(kilograms(1), litres(2));
    // @ts-expect-error a list of kilograms and litres has no sum
    sum([kilograms(1), litres(2)]);
    // @ts-expect-error a bare number has no unit
    plus(kilograms(1), 2);
    expect(plus(kilograms(1), kilograms(2))).toBe(3);
  });
});
