import { expect, it } from 'vitest';
import { columnsAcross } from './columns-across.js';

it('now and fourteen days stand in one table where they fit, else in tables of about as many days', () => {
  expect(columnsAcross(15, 920).map((columns) => columns.length)).toEqual([15]);
  expect(columnsAcross(15, 626)).toEqual([
    [0, 1, 2, 3, 4, 5, 6, 7],
    [8, 9, 10, 11, 12, 13, 14],
  ]);
  expect(columnsAcross(15, 376).map((columns) => columns.length)).toEqual([4, 4, 4, 3]);
  expect(columnsAcross(15, Number.POSITIVE_INFINITY)).toHaveLength(1);
});
