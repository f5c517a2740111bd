import { inches, pounds } from '@drumline/units';
import { expect, it } from 'vitest';
import type { PlacedDrum } from './cabin.js';
import { checkBalance } from './check-balance.js';
import { exampleCabin, exampleType } from './example-flight.js';
import { suggestMove } from './suggest-move.js';

const places = ['BASE', 'NEAR', 'FAR', 'BASE'];
const aftLimit = (aftIn: number) => ({
  ...exampleType,
  envelope: exampleType.envelope.map((point) => ({ ...point, aftIn: inches(aftIn) })),
});
const standing = (positions: readonly [string, number][]): PlacedDrum[] =>
  positions.map(([position, offAfterLeg], i) => ({
    id: `${i}`,
    weightLb: pounds(397),
    offAfterLeg,
    position,
  }));

it('a loading that is aft of its limit is mended by the row that moves forward', () => {
  const cabin = exampleCabin(places, aftLimit(189));
  const drums = standing([
    ['R3L', 0],
    ['R3R', 0],
  ]);
  expect(checkBalance(cabin, drums).faults[0]).toMatchObject({ kind: 'envelope', leg: 'BASE-NEAR' });
  const move = suggestMove(cabin, drums)!;
  expect(move.text).toBe('move two drums from row 3 to row 1');
  expect(checkBalance(cabin, move.drums).holds).toBe(true);
});

it("the first stop's drums behind those that stay change places with them", () => {
  const drums = standing([
    ['R1L', 0],
    ['R1R', 0],
    ['R2L', 1],
    ['R2R', 1],
  ]);
  const cabin = exampleCabin(places);
  expect(checkBalance(cabin, drums).faults.map(({ text }) => text)).toContain('R1L cannot come out past R2L');
  const move = suggestMove(cabin, drums)!;
  expect(move.text).toBe('move two drums from row 1 to row 3');
  expect(checkBalance(cabin, move.drums).holds).toBe(true);
});

it('a loading that holds needs no move', () => {
  const move = suggestMove(
    exampleCabin(places),
    standing([
      ['R1L', 0],
      ['R1R', 0],
    ]),
  )!;
  expect(move).toMatchObject({ text: 'nothing need move', moves: [] });
});

it('has no suggestion where no standing holds', () => {
  expect(suggestMove(exampleCabin(places, aftLimit(180)), standing([['R1L', 0]]))).toBeNull();
});
