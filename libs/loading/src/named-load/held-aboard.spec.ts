import { expect, it } from 'vitest';
import { heldAboardWords } from './held-aboard.js';

const held = 'Batch J27-041 is held: water found.';
const drums = ['0523', '0524'].map((number) => ({ number, held }));

it('of drums of a held batch says which are aboard and which are only set aside for the flight', () => {
  expect(heldAboardWords(drums)).toBe(`${held} Aboard: 0523, 0524.`);
  expect(heldAboardWords(drums, new Set(['0524']))).toBe(`${held} Aboard: 0523. Set aside for it: 0524.`);
  expect(heldAboardWords(drums, new Set(['0523', '0524']))).toBe(`${held} Set aside for it: 0523, 0524.`);
  expect(heldAboardWords([{ number: '0525' }])).toBeNull();
});
