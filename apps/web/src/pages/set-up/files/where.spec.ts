import { expect, it } from 'vitest';
import { faultyLines, linesRead, remedyAt, whereOf } from './where.js';

it('a fault has its line and its cell', () => {
  expect(whereOf('line 9, landingLb')).toEqual({ line: '9', cell: 'landingLb' });
  expect(whereOf('stripLimits[12].landingLb')).toEqual({ line: 'stripLimits 13', cell: 'landingLb' });
  expect(whereOf('policy.fuel')).toEqual({ line: '', cell: 'policy.fuel' });
});

it('what would do is said once for faults in a row that need the same', () => {
  const faults = ['Give a, b.', 'Give a, b.', 'Correct it.', 'Give a, b.'].map((remedy) => ({ remedy }));
  expect(faults.map((_, at) => remedyAt(faults, at))).toEqual([
    'Give a, b.',
    'as above',
    'Correct it.',
    'Give a, b.',
  ]);
});

it('a line with two faults is one faulty line; empty lines are not read', () => {
  expect(faultyLines(['line 2, a', 'line 2, b', 'line 5', ''])).toBe(2);
  expect(linesRead('place,type\r\nXLOR,A\r\n\r\nXLOR,B\r\n')).toBe(2);
});
