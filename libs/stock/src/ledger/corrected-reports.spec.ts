import { describe, expect, it } from 'vitest';
import { at, filled, leftAt, loaded, written } from './example-movements.js';
import type { BroughtHome, Corrected, Movement } from './movement.js';
import { raisedIn } from './raised-in.js';
import { replay } from './replay.js';

// product.md, T2: pilot and second phone report one delivery of F05. The pilot then corrects drum 0575 to "brought back".
const before: readonly Movement[] = [
  filled('0575', '05:00'),
  loaded('0575', '06:00'),
  leftAt('0575', '07:00', { id: 'pilot' }),
  leftAt('0575', '07:20', { id: 'second', by: 'loader' }),
];
const takenBack = (clock = '08:00', corrects = 'pilot'): Corrected => ({
  ...written(`back of ${corrects}`, clock),
  kind: 'corrected',
  corrects,
  reason: 'read again',
});
const broughtBack: BroughtHome = {
  ...leftAt('0575', '07:00'),
  ...{ id: 'instead', kind: 'brought home', place: 'BASE', leg: 2, writtenAt: at('08:00') },
};
const ledgerOf = (...movements: readonly Movement[]) => {
  const state = replay([...before, ...movements]);
  return { drum: state.drums.get('0575')!, raised: raisedIn(state) };
};

describe('a report that its author corrects when a second phone has reported the same', () => {
  it('left there, so it is brought back: the ledger follows the correction, and both first reports still show, reversed', () => {
    const { drum } = ledgerOf(takenBack(), broughtBack);
    expect(drum.where).toEqual({ kind: 'at', place: 'BASE' });
    const entry = (id: string) => drum.history.find(({ movement }) => movement.id === id);
    expect([entry('pilot')!.reversedBy, entry('second')!.reversedBy]).toEqual([
      ['back of pilot'],
      ['back of pilot'],
    ]);
  });

  it('the office gets one item: two reports differ, with what each says', () => {
    const { raised } = ledgerOf(takenBack(), broughtBack);
    expect(raised.map(({ kind, what }) => [kind, what])).toEqual([
      [
        'reports differ',
        'Drum 0575, F05: two reports differ: pilot has corrected "left at" STRIP and says "brought home" BASE; loader says "left at" STRIP. The ledger follows the correction, which is later and deliberate.',
      ],
    ]);
  });

  it('once the second has corrected its report too, nothing is left to be looked at', () => {
    const { drum, raised } = ledgerOf(takenBack(), broughtBack, takenBack('09:00', 'second'));
    expect(drum.where).toEqual({ kind: 'at', place: 'BASE' });
    expect(raised).toEqual([]);
  });

  it('another condition of the same drum: what was corrected leads, though the second wrote earlier', () => {
    const leaking = leftAt('0575', '07:00', {
      id: 'instead',
      condition: 'leaking',
      writtenAt: at('08:00'),
    });
    const { drum, raised } = ledgerOf(takenBack(), leaking);
    expect(drum.fitness.held?.reason).toBe('leaking');
    expect(raised.map(({ what }) => what)).toEqual([
      expect.stringContaining('pilot has corrected it, and that stands'),
    ]);
  });

  it('taken back with nothing in its place: what the second says stands, and the office is told', () => {
    const { drum, raised } = ledgerOf(takenBack());
    expect(drum.where).toEqual({ kind: 'at', place: 'STRIP' });
    expect(raised.map(({ what }) => what)).toEqual([
      'Drum 0575, F05: two reports differ: pilot has taken back "left at" STRIP; loader says "left at" STRIP. What loader says stands.',
    ]);
  });

  it('a double of one person is taken back: that is no difference', () => {
    const double = leftAt('0575', '07:05', { id: 'double' });
    const { drum, raised } = ledgerOf(double, takenBack('08:00', 'double'));
    expect(drum.where).toEqual({ kind: 'at', place: 'STRIP' });
    expect(raised).toEqual([]);
  });

  it('a correction that is itself corrected changes nothing', () => {
    const { drum, raised } = ledgerOf(takenBack(), takenBack('08:30', 'back of pilot'));
    expect(drum.where).toEqual({ kind: 'at', place: 'STRIP' });
    expect(raised).toEqual([]);
  });
});
