import type { Movement } from '@drumline/stock';
import { expect, it } from 'vitest';
import { placeToReportAt, revocableOf, saidOf, takenBackOf } from './take-back.js';

const movement = (id: string, rest: object) => ({ id, ...rest }) as unknown as Movement;
const drawn = movement('d', {
  kind: 'drawn',
  drum: '0467',
  place: 'XESK',
  millilitres: 50_000,
  programme: 'P1',
});
const slung = movement('s', { kind: 'slung', drum: '0470', from: 'XESK', to: 'XMAR' });
const held = movement('h', { kind: 'held', of: { drum: '0469' } });

it('a crew takes back what it drew and slung, once; a hold is for fuel quality', () => {
  const said = revocableOf([drawn, slung, held], new Set(['d']));
  expect(said).toEqual([slung]);
  expect(said.map(saidOf)).toEqual(['set down at XMAR from XESK']);
  expect(said.map(takenBackOf)).toEqual(['drum 0470, set down at XMAR from XESK']);
  expect(placeToReportAt(said)).toBe('XESK');
  expect(revocableOf([drawn], new Set()).map(saidOf)).toEqual(['50 L drawn at XESK for P1']);
});
