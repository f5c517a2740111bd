import { litres } from '@drumline/units';
import { expect, it } from 'vitest';
import { refused } from './cache-page.js';

const byDay = (...figures: readonly number[]) => figures.map((figure) => litres(figure));

const course = (
  usable: readonly number[],
  { landed = usable.map(() => 0), reserve = 200 }: { landed?: number[]; reserve?: number } = {},
) => ({
  usable: byDay(...usable),
  landed: byDay(...landed),
  slungIn: usable.map(() => litres(0)),
  pastRetest: usable.map(() => litres(0)),
  reserveLitres: litres(reserve),
});

// product.md, T9: MAR ends Wed 16 with 39 L of its 600 L after 561 L are drawn; the reserve is 200 L.
it('what is drawn from the medevac reserve is out of the reserve, and nothing is unmet while drums hold it', () => {
  expect(refused(course([600, 39]))).toEqual({ outOfReserveLitres: [0, 161], unmetLitres: [0, 0] });
});

it('unmet is what no drum holds, and agrees with how much the cache is short', () => {
  expect(refused(course([600, -55, -155]))).toEqual({
    outOfReserveLitres: [0, 200, 0],
    unmetLitres: [0, 55, 100],
  });
});

// product.md, section 5, without deliveries: ESK has 1,280 L; the sling to MAR takes 1,200 L and H1 450 L: short 370 L.
it('a sling that goes into the medevac reserve is said with the draws: all 400 L of it', () => {
  expect(refused(course([1280, -370], { reserve: 400 }))).toEqual({
    outOfReserveLitres: [0, 400],
    unmetLitres: [0, 370],
  });
});

it('fuel that lands in a reserve already drawn is out of it again when it is drawn', () => {
  expect(refused(course([-50, 350], { landed: [0, 600], reserve: 400 }))).toEqual({
    outOfReserveLitres: [0, 50],
    unmetLitres: [0, 0],
  });
});
