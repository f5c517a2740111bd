import { expect, it } from 'vitest';
import { meantBy } from './meant-by.js';

const batches = [
  ['J27-04', 'J27-04, filled Sun 18 April 2027'],
  ['J27-041', 'J27-041, filled Mon 19 April 2027'],
  ['J26-118', 'J26-118, filled Tue 9 June 2026'],
] as const;
const numbers = (typed: string) => meantBy(typed, batches).map(([batch]) => batch);

it('a batch named in full is that one, though another begins like it', () => {
  expect(numbers('j27-04 ')).toEqual(['J27-04']);
});

it('a part of one means all that have it, an empty field none', () => {
  expect(numbers('J27')).toEqual(['J27-04', 'J27-041']);
  expect(numbers('118')).toEqual(['J26-118']);
  expect(numbers('9999')).toEqual([]);
  expect(numbers('  ')).toEqual([]);
});
