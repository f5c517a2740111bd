import { describe, expect, it } from 'vitest';
import { at, drawn, flownOut, loaded, ml, received, written } from './example-movements.js';
import type { Movement } from './movement.js';
import { replay } from './replay.js';
import { drum, kindsRaised } from './testing/replayed.js';

describe('what is in a drum', () => {
  it('the first draw opens the drum; the last leaves it empty with residue', () => {
    const once = [...flownOut('0451'), drawn('0451', '09:00', 150)];
    expect(drum(once)).toMatchObject({ content: 'part used', openedAt: at('09:00'), millilitres: ml(50) });
    expect(drum([...once, drawn('0451', '12:00', 50)])).toMatchObject({
      content: 'empty with residue',
      millilitres: 0,
    });
  });

  it('more drawn than was in it leaves nothing, not less, and is raised', () => {
    const movements = [...flownOut('0451'), drawn('0451', '09:00', 230)];
    expect(drum(movements).millilitres).toBe(0);
    expect(kindsRaised(movements)).toEqual(['more than was in it']);
  });

  it('fuel pumped over leaves one drum and is in the other, with its batch', () => {
    const empty = received('0900', '05:00', { content: 'clean empty', millilitres: ml(0), batch: 'none' });
    const pumped: Movement = {
      ...written('pump', '09:00'),
      kind: 'transferred',
      drum: '0451',
      place: 'STRIP',
      into: '0900',
      batch: 'J27',
      millilitres: ml(80),
    };
    const state = replay([...flownOut('0451'), empty, pumped]);
    expect(state.drums.get('0451')).toMatchObject({ content: 'part used', millilitres: ml(120) });
    expect(state.drums.get('0900')).toMatchObject({
      content: 'part used',
      millilitres: ml(80),
      batch: 'J27',
    });
    expect(state.balances.get('STRIP')).toMatchObject({ partUsedDrums: 2, bookMillilitres: ml(200) });
  });

  it('a seal found broken opens the drum and holds it', () => {
    const home: Movement = {
      ...loaded('0451', '08:00'),
      kind: 'brought home',
      id: 'home',
      condition: 'seal broken',
    };
    const state = drum([...flownOut('0451').slice(0, 2), home]);
    expect(state).toMatchObject({ where: { place: 'BASE' }, content: 'part used', millilitres: ml(200) });
    expect(state.fitness.held).toMatchObject({ reason: 'seal broken', by: 'pilot' });
  });
});
