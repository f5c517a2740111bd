import { expect, it } from 'vitest';
import { drumsAtBaseWords, nothingUsableWords } from './fuel-words.js';

const mar = { place: 'XMAR', bookLitres: 600, heldLitres: 600, pastRetestLitres: 0 };

// product.md, T4: with J27-041 held MAR has 0 L usable; its 600 L stand there still.
it('a place whose fuel is all held is not a place without fuel', () => {
  expect(nothingUsableWords(mar)).toBe('XMAR 600 L, all on HOLD');
  expect(nothingUsableWords({ ...mar, heldLitres: 400, pastRetestLitres: 200 })).toBe(
    'XMAR 600 L, 400 L on HOLD, 200 L past retest',
  );
  expect(nothingUsableWords({ ...mar, heldLitres: 0 })).toBe('XMAR 600 L, and the count found none');
  expect(nothingUsableWords({ ...mar, bookLitres: 0, heldLitres: 0 })).toBe('XMAR none by the book');
});

it('drums at a base: those that may be used first, then those that may not', () => {
  const drums = { usableDrums: 46, heldDrums: 14, pastRetestDrums: 0 };
  expect(drumsAtBaseWords(drums)).toBe('46 drums fit, 14 on HOLD');
  expect(drumsAtBaseWords({ usableDrums: 1, heldDrums: 0, pastRetestDrums: 2 })).toBe(
    '1 drum fit, 2 past retest',
  );
});
