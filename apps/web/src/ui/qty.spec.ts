import { describe, expect, it } from 'vitest';
import { figure, inWords, stockInWords } from './qty.js';

describe('a figure', () => {
  it('has thousands with a comma and the true minus sign', () => {
    expect([figure(8528), figure(-1078.25, 1)]).toEqual(['8,528', '−1,078.3']);
  });

  it('that is rounded to nothing has no sign', () => {
    expect([figure(-0.4), figure(0.4, 0, true), figure(406, 0, true)]).toEqual(['0', '0', '+406']);
  });

  it('stands with its unit, one drum apart from more', () => {
    expect([inWords(1, 'drums'), inWords(6, 'drums'), inWords(1.9, '%', 1)]).toEqual([
      '1 drum',
      '6 drums',
      '1.9 %',
    ]);
    expect([inWords(1, 'lines'), inWords(0, 'items'), inWords(1, 'entries')]).toEqual([
      '1 line',
      '0 items',
      '1 entry',
    ]);
  });

  it('of stock is never below nothing: what is asked for beyond it is said in words', () => {
    expect([1200, 0, -0.4, -120].map(stockInWords)).toEqual(['1,200 L', '0 L', '0 L', 'short 120 L']);
  });
});
