import { litres } from '@drumline/units';
import { expect, it } from 'vitest';
import { printedTexts } from '../testing/printed-texts.js';
import { type CacheBoard, cacheBoardPage } from './cache-board.js';

const board: CacheBoard = {
  place: 'XESK',
  name: 'Eskerby',
  radioTime: '07:00',
  inOrder: Array.from({ length: 11 }, (_, at) => ({ number: `${468 + at}`, litres: litres(200) })),
  held: [],
  usableLitres: litres(2200),
  bookLitres: litres(2200),
  drums: 11,
  empties: 2,
  lastCount: '2,200 L on 12 June 2027',
  levels: null,
};
const words = (of: CacheBoard) =>
  printedTexts(cacheBoardPage(of, { at: 'Mon 14 June 2027 17:02', by: 'Demo dispatcher' }))
    .map(({ text }) => text)
    .join(' ');

it('a board has a line for eight drums, the numbers of the others below, and the last count', () => {
  expect(words(board)).toContain('Then 476, 477, 478.');
  expect(words(board)).toMatch(/opened _+ left _+ L/);
  expect(words(board)).toContain(
    'By the book now 2,200 L in 11 drums. Somebody last counted 2,200 L on 12 June 2027.',
  );
  expect(words({ ...board, lastCount: null })).toContain('Never counted. Counted since');
});
