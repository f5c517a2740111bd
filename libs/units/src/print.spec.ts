import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decimalsOf, print, printMoney, printNumber, printPrice } from './print.js';
import { celsius, cents, centsPerLitre, kilogramsPerLitre, knots, litres, pounds } from './quantity.js';

describe('printing', () => {
  it('a figure carries its unit, thousands in commas', () => {
    expect(print(pounds(8528), 'lb')).toBe('8,528 lb');
    expect(print(litres(1234567.4), 'L')).toBe('1,234,567 L');
    expect(print(kilogramsPerLitre(0.804), 'kg/L', 3)).toBe('0.804 kg/L');
    expect(print(celsius(15), 'degC', 1)).toBe('15.0 °C');
  });

  it('a figure below zero has a true minus, and nothing is never negative', () => {
    expect(print(knots(-10), 'kt')).toBe('\u221210 kt');
    expect(print(litres(-0.4), 'L')).toBe('0 L');
    expect(print(litres(-0.4), 'L', 1)).toBe('\u22120.4 L');
    expect(printNumber(-0)).toBe('0');
  });

  it('the unit printed is the unit of the figure, or it does not compile', () => {
    // @ts-expect-error pounds are not printed as kilograms
    expect(print(pounds(1), 'kg')).toBe('1 kg');
    // @ts-expect-error money has its own printer
    expect(print(cents(1), 'cent')).toBe('1 undefined');
  });

  it('money is printed in the operator’s currency', () => {
    expect(printMoney(cents(123760), 'cr')).toBe('1,237.60 cr');
    expect(printMoney(cents(-5), 'cr')).toBe('\u22120.05 cr');
    expect(printPrice(centsPerLitre(179.6), 'cr')).toBe('1.80 cr/L');
  });

  it('rounding: once, from the exact figure, halves away from zero', () => {
    expect([0.5, 1.5, 2.5, -2.5].map((value) => printNumber(value))).toEqual(['1', '2', '3', '\u22123']);
    expect(printNumber(999.5)).toBe('1,000');
  });

  it('a limit is printed as it was given: a tailwind of 5.5 kt is not let be 6', () => {
    expect([5.5, 3].map((limit) => print(knots(limit), 'kt', decimalsOf(limit)))).toEqual(['5.5 kt', '3 kt']);
  });

  it('a printed figure reads back as the figure', () => {
    fc.assert(
      fc.property(fc.integer({ min: -1e9, max: 1e9 }), (value) => {
        expect(Number(printNumber(value).replaceAll(',', '').replace('\u2212', '-'))).toBe(value + 0);
      }),
    );
  });

  it('refuses to print what is not a figure', () => {
    expect(() => print(pounds(Number.NaN), 'lb')).toThrow(/finite figure/);
  });
});
