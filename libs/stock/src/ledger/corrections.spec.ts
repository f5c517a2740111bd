import { describe, expect, it } from 'vitest';
import { corrected, drawn, flownOut, ml } from './example-movements.js';
import { raisedIn } from './raised-in.js';
import { applyMovement, replay } from './replay.js';
import { drum, kindsRaised } from './testing/replayed.js';

describe('corrections', () => {
  it('after a correction the figures are as before it, and both entries still show', () => {
    const wrong = drawn('0451', '09:00', 60);
    const { millilitres, content, history } = drum([
      ...flownOut('0451'),
      wrong,
      corrected(wrong.id, '10:00'),
    ]);
    expect([millilitres, content]).toEqual([ml(200), 'filled sealed']);
    expect(history.at(-1)).toMatchObject({ movement: wrong, reversedBy: [`correct-${wrong.id}`] });
  });

  it('a correction of the correction brings the entry back', () => {
    const wrong = drawn('0451', '09:00', 60);
    const undone = corrected(`correct-${wrong.id}`, '11:00');
    expect(drum([undone, ...flownOut('0451'), wrong, corrected(wrong.id, '10:00')]).millilitres).toBe(
      ml(140),
    );
  });

  it('a correction that arrives before its entry is raised, and counts once the entry comes', () => {
    const wrong = drawn('0451', '09:00', 60);
    const early = [...flownOut('0451'), corrected(wrong.id, '10:00')];
    expect(kindsRaised(early)).toEqual(['corrects an unknown movement']);
    const state = applyMovement(replay(early), wrong);
    expect(state.drums.get('0451')!.millilitres).toBe(ml(200));
    expect(raisedIn(state)).toEqual([]);
  });
});
