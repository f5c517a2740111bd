import { hours, minutes } from '@drumline/units';
import { expect, it } from 'vitest';
import { awayWord, expectedBack } from './who-is-away.js';

const back = expectedBack({
  offAt: '2027-06-14T08:10:00Z',
  blockHours: hours(1.9),
  stops: 1,
  turnRoundMinutes: minutes(30),
});

it('expected back: a flight is, its block time and its turn-round after it was off', () => {
  expect(back).toBe('2027-06-14T10:34:00Z');
});

it('in the circuit until the operator’s minutes are over, then overdue; down and well once it has landed', () => {
  const away = { state: 'away', expectedBackAt: back, overdueAfterMinutes: minutes(30) } as const;
  expect(awayWord(away, '2027-06-14T11:04:00Z')).toBe('in the circuit');
  expect(awayWord(away, '2027-06-14T11:05:00Z')).toBe('overdue');
  expect(awayWord({ ...away, state: 'home' }, '2027-06-14T12:00:00Z')).toBe('down and well');
});

it('nobody is overdue where the operator has not said after how long', () => {
  const away = { state: 'away', expectedBackAt: back, overdueAfterMinutes: null } as const;
  expect(awayWord(away, '2027-06-15T00:00:00Z')).toBe('in the circuit');
});
