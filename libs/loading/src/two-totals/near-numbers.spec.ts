import { expect, it } from 'vitest';
import { nearNumbers } from './near-numbers.js';

const load = ['0447', '0448', '0452', '0576'];

it.each([
  ['a digit misread', '0449', ['0447', '0448']],
  ['two digits changed over', '0425', ['0452']],
  ['a digit missing', '576', ['0576']],
  ['nothing near', '0913', []],
] as const)('%s', (_, typed, near) => {
  expect(nearNumbers(typed, load)).toEqual(near);
});
