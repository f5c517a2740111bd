import { litres } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { unlikeItsDrums } from './counted-drums.js';

const rules = {
  fillLitres: litres(200),
  countTolerance: { percentOfBook: 2, litresPerOpenDrum: litres(10), reference: 'stock manual 4.2' },
};
const words = (found: number, sealedDrums: number, openDrums: number) =>
  unlikeItsDrums({ litres: litres(found), sealedDrums, openDrums }, rules);

describe('a count held against its own drums', () => {
  // Product.md, T5: XCIN dip 2,150 L, its book 12 full drums.
  it('2,150 L with 12 sealed and none open: the sealed ones hold 2,400 L', () => {
    expect(words(2150, 12, 0)).toBe('2,150 L, and 12 sealed drums hold 2,400 L');
  });

  it('2,150 L with 10 sealed and one open agree, and so do 2,385 L with 12 sealed: 48 L are allowed', () => {
    expect([words(2150, 10, 1), words(2385, 12, 0), words(2448, 12, 0)]).toEqual([null, null, null]);
    expect(words(2449, 12, 0)).toBe('2,449 L, and 12 sealed drums hold 2,400 L');
  });

  it('99,999 L are more than the drums hold', () => {
    expect(words(99_999, 12, 1)).toBe('99,999 L, and 12 sealed and 1 open drums hold 2,400 L to 2,600 L');
    expect(words(500, 0, 1)).toBe('500 L, and 0 sealed and 1 open drums hold up to 200 L');
  });
});
