import { describe, expect, it } from 'vitest';
import { at, drawn, flownOut, leftAt, ml, received } from './example-movements.js';
import { raisedIn } from './raised-in.js';
import { replay } from './replay.js';
import { drum, kindsRaised } from './testing/replayed.js';

describe('one event reported several times', () => {
  it('the same report sent five times changes the stock once', () => {
    const five = Array.from({ length: 5 }, () => flownOut('0451')).flat();
    expect(replay(five)).toEqual(replay(flownOut('0451')));
  });

  it('pilot and second phone report one delivery: one movement, two witnesses', () => {
    const second = leftAt('0451', '07:20', { id: 'left-again', by: 'loader', receivedAt: at('19:00') });
    const { where, history, steps, raised } = drum([...flownOut('0451'), second]);
    expect(where).toMatchObject({ place: 'STRIP' });
    expect(history.find(({ movement }) => movement.id === 'left-again')).toMatchObject({
      sameAs: 'left-0451',
      witnesses: ['pilot', 'loader'],
    });
    expect(steps).toHaveLength(3);
    expect(raised).toEqual([]);
  });

  it('where the two differ, the first written stands and the difference is raised', () => {
    const second = leftAt('0451', '07:20', {
      id: 'left-again',
      by: 'loader',
      place: 'PAD',
      condition: 'damaged',
    });
    const { where, fitness, raised } = drum([...flownOut('0451'), second]);
    expect(where).toMatchObject({ place: 'STRIP' });
    expect(fitness.held).toBeNull();
    expect(raised).toMatchObject([
      { kind: 'reports differ', drum: '0451', movements: ['left-0451', 'left-again'] },
    ]);
  });

  it('draws are never merged: two alike both count, and are raised', () => {
    const twice = [drawn('0451', '09:00', 60), drawn('0451', '09:40', 60, { by: 'pilot' })];
    const movements = [...flownOut('0451'), ...twice];
    expect(drum(movements).millilitres).toBe(ml(80));
    expect(kindsRaised(movements)).toEqual(['draws look alike']);
  });

  it('one draw of 450 L out of three drums is one report; a second person who writes the same down is not', () => {
    const full = [...flownOut('0451'), ...flownOut('0452'), ...flownOut('0453')];
    const outOf = (by: string) => [
      drawn('0451', '09:00', 200, { by }),
      drawn('0452', '09:00', 200, { by }),
      drawn('0453', '09:00', 50, { by }),
    ];
    expect(kindsRaised([...full, ...outOf('crew H1')])).toEqual([]);
    const again = [...full, ...outOf('crew H1'), drawn('0451', '09:00', 200, { id: 'again', by: 'pilot' })];
    expect(kindsRaised(again)).toContain('draws look alike');
  });

  it('draws of other litres, another place or hours apart do not look alike', () => {
    const apart = [drawn('0451', '09:00', 60), drawn('0451', '09:40', 50), drawn('0451', '11:30', 60)];
    expect(kindsRaised([...flownOut('0451'), ...apart])).toEqual([]);
  });
});

describe('a mistyped number', () => {
  it('0999 left at the strip is an unknown drum, not an empty one: its content is unknown, and it is raised', () => {
    const state = replay([...flownOut('0451'), leftAt('0999', '07:00')]);
    expect(state.balances.get('STRIP')).toMatchObject({ sealedDrums: 1, emptyDrums: 0 });
    expect(state.drums.get('0999')!.where).toEqual({ kind: 'at', place: 'STRIP' });
    expect(raisedIn(state).map(({ what }) => what)).toEqual([
      expect.stringContaining('unknown drum 0999, not counted as empty'),
    ]);
  });

  it('a drum that came into the book as empty is counted as empty', () => {
    const empty = received('0452', '05:00', { content: 'clean empty', millilitres: ml(0) });
    expect(replay([empty]).balances.get('STRIP')).toMatchObject({ emptyDrums: 1 });
  });
});
