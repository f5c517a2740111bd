import { expect, it } from 'vitest';
import { kindsOf } from './watched.js';

it('a flight is read again when flights or surface reports have changed', () => {
  expect(kindsOf('/api/flights/F05?x=1')).toEqual(expect.arrayContaining(['flights', 'surfaceReports']));
});

it('a list of the territory is read again when the territory has changed', () => {
  expect(kindsOf('/api/strip-limits')).toContain('territory');
});
