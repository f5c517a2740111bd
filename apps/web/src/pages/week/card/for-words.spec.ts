import { expect, it } from 'vitest';
import type { Card } from './card-read.js';
import { forWords } from './card-words.js';

const reason = (text: string, level: string | null) => ({
  reason: {
    text,
    ifDeclined: '',
    protects: level === null ? null : { place: 'XGAN', date: '2027-06-27', level },
  },
});
const card = (planned: object, today: object | null) =>
  ({ planned, today: today === null ? null : { planned: today } }) as unknown as Card;

const brings = 'Brings XGAN to its end target on Sun 27 Jun: 1,480 L with it, 1,080 L without.';
const keeps = 'Keeps XGAN above minimum on Sat 19 Jun.';
const adds = 'Adds stock that no cache needs by the end: without it XGAN ends at 1,080 L.';

it('a flight planned for what a cache is to hold at the end is not called stock that no cache needs', () => {
  const planned = reason(brings, 'short of the end target');
  expect(forWords(card(planned, reason(adds, null)))).toBe(`As planned: ${brings}`);
});

it('the facts of today go before those of the plan wherever they ask for the flight, or no longer do', () => {
  expect(forWords(card(reason(brings, 'short of the end target'), reason(keeps, 'below minimum')))).toBe(
    keeps,
  );
  expect(forWords(card(reason(keeps, 'below minimum'), reason(adds, null)))).toBe(adds);
  expect(forWords(card(reason(keeps, 'below minimum'), null))).toBe(keeps);
});
