import { expect, it } from 'vitest';
import type { Line } from './line.js';
import { lineWords } from './line-words.js';

const noon = Date.parse('2027-06-15T12:00:00Z');
const at = (sinceMs: number, line: Partial<Line> = {}) =>
  lineWords(
    {
      heard: { phoneMs: noon, territoryAheadMs: 0, serverAheadMs: 0, timeZone: 'UTC' },
      withBase: true,
      ...line,
    },
    new Date(noon + sinceMs),
    (date) => date.toISOString().slice(11, 16),
  );

it('an answer of the last minute and a half is with base, with its time', () => {
  expect(at(0)).toBe('With base 12:00');
  expect(at(90_000)).toBe('With base 12:00');
});

it('one that is older says nothing of now, also where nobody has asked since', () => {
  expect(at(91_000)).toBe('Not with base 1 min');
  expect(at(97 * 60_000)).toBe('Not with base 1 h 37');
});

it('a line that has just gone is said at once', () => {
  expect(at(5_000, { withBase: false })).toBe('Not with base now');
  expect(at(0, { heard: null })).toBe('Not with base yet');
});
