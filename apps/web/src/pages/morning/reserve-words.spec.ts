import { expect, it } from 'vitest';
import { reserveAt, reserveSaid } from './reserve-words.js';

const at = (place: string, reserveLitres: number, reserveSetLitres: number) => ({
  place,
  reserveLitres,
  reserveSetLitres,
});

it('the whole reserve is locked: its litres, and at how many caches', () => {
  expect(reserveSaid([at('XESK', 400, 400), at('XMAR', 200, 200), at('XBIR', 0, 0)])).toEqual({
    value: '600 L',
    note: 'locked, 2 caches',
    isShort: false,
  });
});

// Product.md, T4: after the recall KNA has 120 L of its 200 L, MAR nothing of its 200 L.
it('what is missing of it is said with its places, and never just left out', () => {
  expect(reserveSaid([at('XESK', 400, 400), at('XKNA', 120, 200), at('XMAR', 0, 200)])).toEqual({
    value: '520 L',
    note: 'of 800 L, short at XKNA, XMAR',
    isShort: true,
  });
  expect([reserveAt(at('XKNA', 120, 200)), reserveAt(at('XESK', 400, 400))]).toEqual([
    '120 L of 200 L',
    '400 L',
  ]);
});
