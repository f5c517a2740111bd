import { describe, expect, it } from 'vitest';
import { at, filled, flownOut, loaded, ml, written } from './example-movements.js';
import type { Movement } from './movement.js';
import { raisedIn } from './raised-in.js';
import { replay } from './replay.js';
import { drum, kindsRaised } from './testing/replayed.js';

describe('where a drum is', () => {
  it('a drum filled, loaded and left at a strip stands there, and nothing is raised', () => {
    const state = replay(flownOut('0451'));
    expect(state.drums.get('0451')).toMatchObject({
      where: { kind: 'at', place: 'STRIP' },
      content: 'filled sealed',
      millilitres: ml(200),
    });
    expect([...state.balances.keys()]).toEqual(['STRIP']);
    expect(raisedIn(state)).toEqual([]);
  });

  it('a loaded drum is aboard its flight and stands at no place', () => {
    const state = replay(flownOut('0451').slice(0, 2));
    expect(state.drums.get('0451')!.where).toEqual({ kind: 'aboard', flight: 'F05', leg: 1, from: 'BASE' });
    expect(state.balances.size).toBe(0);
  });

  it('the movement that happened last decides, though another was written and received later', () => {
    const late = loaded('0451', '06:00', { means: 'paper', writtenAt: at('17:00'), receivedAt: at('18:00') });
    expect(drum([flownOut('0451')[2]!, flownOut('0451')[0]!, late]).where).toMatchObject({ place: 'STRIP' });
  });

  it('of two that happened at one moment, the one written later decides', () => {
    const sling = (to: string, writtenAt: string): Movement => ({
      ...written(`sling-${to}`, '09:00', { writtenAt: at(writtenAt) }),
      kind: 'slung',
      drum: '0451',
      helicopter: 'H1',
      from: 'STRIP',
      to,
    });
    const both = [sling('PAD', '09:30'), sling('RIDGE', '09:10')];
    expect(drum([...flownOut('0451'), ...both]).where).toMatchObject({ place: 'PAD' });
  });

  it('of two written at one moment too, its life gives the order: loaded, then brought home, whatever their ids', () => {
    const minute = { happenedAt: at('06:02'), writtenAt: at('06:02') };
    const out = loaded('0451', '06:02', { id: 'z', ...minute });
    const home: Movement = { ...out, id: 'a', kind: 'brought home', place: 'BASE' };
    for (const list of [
      [out, home],
      [home, out],
    ]) {
      const movements = [filled('0451', '05:00'), ...list];
      expect(drum(movements).where).toEqual({ kind: 'at', place: 'BASE' });
      expect(kindsRaised(movements)).toEqual([]);
    }
  });

  it('held and released at one moment it is held: in doubt a drum is not used', () => {
    const of = { drum: '0451' };
    const hold: Movement = { ...written('a', '08:00'), kind: 'held', of, reason: 'water' };
    const release: Movement = { ...hold, id: 'z', kind: 'released', second: 'quality' };
    expect(drum([...flownOut('0451'), hold, release]).fitness.held).toMatchObject({ reason: 'water' });
  });

  it('a lost drum is nowhere, and is found where it is found', () => {
    const lost: Movement = { ...written('lost', '08:00'), kind: 'lost', drum: '0451', place: 'STRIP' };
    const found: Movement = { ...written('found', '10:00'), kind: 'found', drum: '0451', place: 'PAD' };
    expect(drum([...flownOut('0451'), lost]).where).toEqual({ kind: 'unknown', lastSeenAt: 'STRIP' });
    expect(drum([...flownOut('0451'), lost, found]).where).toEqual({ kind: 'at', place: 'PAD' });
    expect(kindsRaised([...flownOut('0451'), lost, found])).toEqual([]);
  });
});
