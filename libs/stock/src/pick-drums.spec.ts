import { expect, it } from 'vitest';
import { newBatch, oldBatch, partDrum, sealedDrum } from './example-stock.js';
import { pickDrums } from './pick-drums.js';

const batches = [oldBatch, newBatch];
const stored = [
  sealedDrum('10', 'new', 'BASE'),
  sealedDrum('9', 'new', 'BASE'),
  sealedDrum('11', 'old', 'BASE'),
  partDrum('1', 'old', 'BASE', 100),
  {
    ...sealedDrum('2', 'old', 'BASE'),
    held: { reason: 'recall', by: 'fuel quality', at: '2027-06-14T05:00Z' },
  },
  sealedDrum('3', 'old', 'ELSEWHERE'),
];
const pick = (...requests: readonly { readonly drums: number; readonly plannedUse: string }[]) =>
  pickDrums(
    requests.map((request, index) => ({ id: `F${index + 1}`, place: 'BASE', ...request })),
    stored,
    batches,
  ).map(({ id, drums, toFill }) => [id, drums.map(({ number }) => number), toFill]);

it('oldest fit first: sealed drums by retest date, then the lower number; held and opened ones are never picked', () => {
  expect(pick({ drums: 3, plannedUse: '2027-06-15' })).toEqual([['F1', ['11', '9', '10'], 0]]);
});

it('age at use: a drum that is past its retest date when the plan burns it is left behind', () => {
  expect(pick({ drums: 1, plannedUse: '2027-06-16' })).toEqual([['F1', ['9'], 0]]);
});

it('a drum goes to one flight, and what nobody has filled yet is to fill', () => {
  expect(pick({ drums: 2, plannedUse: '2027-06-14' }, { drums: 3, plannedUse: '2027-06-14' })).toEqual([
    ['F1', ['11', '9'], 0],
    ['F2', ['10'], 2],
  ]);
});
