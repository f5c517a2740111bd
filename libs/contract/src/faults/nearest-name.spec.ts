import { expect, it } from 'vitest';
import { nearestName } from './nearest-name.js';

const codes = ['XALD', 'XLOR', 'XMER', 'XESK'];

it.each([
  ['XLRO', 'XLOR'],
  ['XME', 'XMER'],
  ['xesk', 'XESK'],
  ['landngLb', null],
  ['QQQQ', null],
])('%s most likely means %s', (typed, meant) => {
  expect(nearestName(typed, codes)).toBe(meant);
});

it('a field name with a letter left out is found among its neighbours', () => {
  expect(nearestName('landngLb', ['takeoffLb', 'landingLb', 'whenSoft'])).toBe('landingLb');
});
