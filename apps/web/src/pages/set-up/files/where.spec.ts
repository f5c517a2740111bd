import { expect, it } from 'vitest';
import { fitLines, linesRead, remedyAt, unreadable, whereOf } from './where.js';

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

it('a line with two faults is one that does not fit; empty lines are not read', () => {
  expect(linesRead('place,type\r\nXLOR,A\r\n\r\nXLOR,B\r\n')).toBe(2);
  expect(fitLines(5, ['line 2, a', 'line 2, b', 'line 5', ''])).toBe(3);
});

it('no line fits under wrong headings, and never fewer than none', () => {
  expect(fitLines(9, ['line 1, litres', 'line 1, drum'])).toBe(0);
  expect(fitLines(0, ['line 1, litres'])).toBe(0);
});

it('an empty file, a workbook and letters of another encoding are told before anything is tried', () => {
  expect(unreadable('number,place\n0001,XLOR\n')).toBeUndefined();
  expect(unreadable('\n')).toBe('The file is empty.');
  expect(unreadable('PK\u0003\u0004')).toContain('save it as CSV, from the spreadsheet');
  expect(unreadable('number\n\uFFFD1')).toContain('in UTF-8');
});
