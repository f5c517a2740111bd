import { expect, it } from 'vitest';
import { momentWords, runWords, stockWords, unmetWords } from './wording.js';

it('days in a row are told by their ends, days apart one by one', () => {
  expect(runWords(['2031-03-03'])).toBe('Mon 3 Mar');
  expect(runWords(['2031-03-04', '2031-03-03'])).toBe('Mon 3 Mar and Tue 4 Mar');
  expect(runWords(['2031-02-27', '2031-02-28', '2031-03-01', '2031-03-05'])).toBe(
    'Thu 27 Feb to Sat 1 Mar and Wed 5 Mar',
  );
});

it('time zone: a moment is told on the clocks of the place', () => {
  expect(momentWords('2031-03-03T23:30Z', 'Etc/GMT-1')).toBe('Tue 4 Mar 00:30');
});

it('a stock is never below nothing', () => {
  expect([1200, 0, -175].map(stockWords)).toEqual(['1,200 L', 'nothing', 'nothing']);
});

it('medevac reserve: what cannot be drawn is told with the reserve that stays', () => {
  expect(unmetWords(25, 375, 0)).toBe('25 L of the 375 L asked for cannot be drawn');
  expect(unmetWords(325, 325, 400)).toBe(
    'none of the 325 L asked for can be drawn without going into the reserve',
  );
});
