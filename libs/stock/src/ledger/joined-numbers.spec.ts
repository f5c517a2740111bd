import { describe, expect, it } from 'vitest';
import { at, corrected, flownOut, leftAt, written } from './example-movements.js';
import type { Movement } from './movement.js';
import { raisedIn } from './raised-in.js';
import { replay } from './replay.js';

describe('a drum whose number cannot be read', () => {
  const unread = leftAt('?-7', '07:00');
  const join: Movement = { ...written('join', '12:00'), kind: 'joined', provisional: '?-7', drum: '0451' };
  const sentOut = flownOut('0451').slice(0, 2);

  it('stands under its provisional number until it is joined to the real one', () => {
    const state = replay([...sentOut, unread]);
    expect([...state.drums.keys()].sort()).toEqual(['0451', '?-7']);
    expect(raisedIn(state).map(({ kind }) => kind)).toEqual(['not in the book']);
  });

  it('is one drum with the whole story after the join', () => {
    const state = replay([unread, join, ...sentOut]);
    expect([...state.drums.keys()]).toEqual(['0451']);
    expect(state.drums.get('0451')).toMatchObject({ where: { place: 'STRIP' }, alsoKnownAs: ['?-7'] });
    expect(raisedIn(state)).toEqual([]);
  });

  it('is two drums again when the join is corrected', () => {
    const state = replay([...sentOut, unread, join, corrected('join', '13:00')]);
    expect(state.drums.get('0451')!.where.kind).toBe('aboard');
    expect(state.drums.get('?-7')!.where).toEqual({ kind: 'at', place: 'STRIP' });
  });

  it('joined to two numbers: the first written stands, and it is raised', () => {
    const other: Movement = { ...join, id: 'join-2', writtenAt: at('12:30'), drum: '0452' };
    const state = replay([other, ...sentOut, unread, join]);
    expect(state.drums.get('0451')!.alsoKnownAs).toEqual(['?-7']);
    expect(raisedIn(state).map(({ kind }) => kind)).toEqual(['joined twice']);
  });
});
