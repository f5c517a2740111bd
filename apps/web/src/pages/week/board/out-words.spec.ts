import { expect, it } from 'vitest';
import { exampleWeek } from '../week-example.js';
import { hasLongReason, outKey } from './out-words.js';

const weekWith = (...absences: { from: string; until: string; reason: string }[]) =>
  exampleWeek({ aircraft: [{ tail: 'A2', type: 'A', home: 'XHOM', absences }] });
const day = (date: string) => `day ${date.slice(-1)}`;

const inspection = { from: '2031-03-04', until: '2031-03-09', reason: 'scheduled inspection' };

it('the key says why an aircraft is out; with the day where it is out for more than one reason', () => {
  const before = { from: '2031-02-20', until: '2031-03-03', reason: 'propeller change' };
  expect(outKey(weekWith(inspection), day)).toEqual(['A2 scheduled inspection']);
  expect(outKey(weekWith(before, inspection), day)).toEqual([
    'A2 day 3 propeller change',
    'A2 day 4 scheduled inspection',
  ]);
});

it('the key leaves out what is over before these days, or comes after them', () => {
  const over = { ...inspection, from: '2031-02-20', until: '2031-03-02' };
  const later = { ...inspection, from: '2031-03-06' };
  expect(outKey(weekWith(over, later), day)).toEqual([]);
});

it('a reason with a word longer than a narrow day is said in the key', () => {
  expect(hasLongReason(weekWith(inspection))).toBe(false);
  expect(hasLongReason(weekWith({ ...inspection, reason: 'unserviceable' }))).toBe(true);
  expect(hasLongReason(weekWith({ ...inspection, reason: 'hundred-hour check' }))).toBe(false);
});
