import { expect, it } from 'vitest';
import { kindNamed } from './kinds.js';
import { subjectOf } from './subject-of.js';

it('a helicopter task goes by helicopter, place and day, never by the id it is kept under', () => {
  const task = { helicopter: 'H1', place: 'XMAR', date: '2027-06-16', litres: 561 };
  const id = '1d283faa-0000-4000-8000-000000000000';
  expect(subjectOf(kindNamed('helicopter-tasks'), id, task)).toBe('helicopter task H1, XMAR, 2027-06-16');
  const sling = { helicopter: 'H1', from: 'XLOR', to: 'XMAR', date: '2027-06-16' };
  expect(subjectOf(kindNamed('slings'), id, sling)).toBe('sling move H1, XLOR-XMAR, 2027-06-16');
});

it('of the policy there is one: it has no name; a cache goes by its place', () => {
  expect(subjectOf(kindNamed('policy'), 'current', {})).toBe('policy');
  expect(subjectOf(kindNamed('caches'), 'XMAR', { place: 'XMAR' })).toBe('cache XMAR');
});
