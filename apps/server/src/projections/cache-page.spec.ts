import { litres } from '@drumline/units';
import { expect, it } from 'vitest';
import { refused } from './cache-page.js';

const byDay = (...figures: readonly number[]) => figures.map((figure) => litres(figure));

// product.md, T9: MAR ends Wed 16 with 39 L of its 600 L after 561 L are drawn; the reserve is 200 L.
it('what is drawn from the medevac reserve is out of the reserve, and nothing is unmet while drums hold it', () => {
  expect(refused({ usable: byDay(600, 39), unmet: byDay(0, 161) })).toEqual({
    outOfReserveLitres: [0, 161],
    unmetLitres: [0, 0],
  });
});

it('unmet is what no drum holds, and agrees with how much the cache is short', () => {
  expect(refused({ usable: byDay(600, -55, -155), unmet: byDay(0, 255, 100) })).toEqual({
    outOfReserveLitres: [0, 200, 0],
    unmetLitres: [0, 55, 100],
  });
});
