import { litres } from '@drumline/units';
import { expect, it } from 'vitest';
import { drawsLeft } from './draws-left.js';

const draw = (amount: number, place = 'XESK', purpose = 'P1') => ({
  date: '2027-06-14',
  place,
  litres: litres(amount),
  for: purpose,
});

it('what was drawn is taken off the planned draws of its own day, place and purpose, in their order', () => {
  const planned = [draw(100), draw(350), draw(200, 'XMAR'), draw(50, 'XESK', 'P2')];
  expect(drawsLeft(planned, [draw(150), draw(75, 'XMAR')]).map((each) => each.litres)).toEqual([
    0, 300, 125, 50,
  ]);
});

it('what was drawn beyond them is taken off nothing else', () => {
  expect(drawsLeft([draw(100), draw(50, 'XMAR')], [draw(400)]).map((each) => each.litres)).toEqual([0, 50]);
});
