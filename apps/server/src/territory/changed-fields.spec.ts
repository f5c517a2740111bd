import { expect, it } from 'vitest';
import { changedFields } from './changed-fields.js';

const before = { title: 'Uplands', offeredDays: 7, noFlyingDays: ['2027-06-20'], currency: 'cr' };

it('names what is another than before, from what to what', () => {
  expect(changedFields(before, { ...before, offeredDays: 5 })).toEqual(['offered days 7 to 5']);
  expect(changedFields(before, { ...before, clockStartsAt: '2027-06-14T06:00Z' })).toEqual([
    'clock starts at none to 2027-06-14T06:00Z',
  ]);
});

it('of what is more than a word or a figure says only that it is another', () => {
  const after = {
    ...before,
    title: 'The uplands, all of them, and both bases, from 14 June on',
    noFlyingDays: [],
  };
  expect(changedFields(before, after)).toEqual(['title', 'no flying days']);
});

it('says nothing of what stays', () => {
  expect(changedFields(before, { ...before })).toEqual([]);
});
