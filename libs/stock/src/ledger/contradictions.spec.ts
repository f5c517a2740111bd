import { describe, expect, it } from 'vitest';
import {
  at,
  corrected,
  drawn,
  filled,
  flownOut,
  leftAt,
  loaded,
  received,
  written,
} from './example-movements.js';
import type { Movement } from './movement.js';
import { raisedIn } from './raised-in.js';
import { applyMovement, replay } from './replay.js';
import { kindsRaised } from './testing/replayed.js';

describe('a report that contradicts the book is accepted and raised', () => {
  const hold: Movement = { ...written('hold', '05:30'), kind: 'held', of: { drum: '0451' }, reason: 'water' };
  const batchHold: Movement = {
    ...written('hold', '05:30'),
    kind: 'held',
    of: { batch: 'J27' },
    reason: 'recall',
  };

  it.each<[string, readonly Movement[], string]>([
    [
      'drawn at a pad where the drum never was',
      [...flownOut('0451'), drawn('0451', '09:00', 50, { place: 'PAD' })],
      'not there',
    ],
    ['a number that nobody filled', [leftAt('0999', '07:00')], 'not in the book'],
    [
      'loaded, filled an hour later',
      [loaded('0451', '04:00'), filled('0451', '05:00')],
      'loaded before filled',
    ],
    [
      'left at a strip without being loaded',
      [filled('0451', '05:00'), leftAt('0451', '07:00')],
      'not aboard',
    ],
    [
      'loaded on a second flight',
      [
        filled('0451', '05:00'),
        loaded('0451', '06:00'),
        loaded('0451', '06:10', { id: 'again', flight: 'F06' }),
      ],
      'aboard two flights',
    ],
    [
      'a held drum loaded outbound',
      [filled('0451', '05:00'), hold, loaded('0451', '06:00')],
      'held drum loaded',
    ],
    [
      'a drum of a held batch loaded',
      [filled('0451', '05:00'), loaded('0451', '06:00'), batchHold],
      'held drum loaded',
    ],
    [
      'filled while there was fuel in it',
      [filled('0451', '05:00'), filled('0451', '06:00', { id: 'again' })],
      'filled over fuel',
    ],
    [
      'received twice',
      [received('0451', '05:00'), received('0451', '06:00', { id: 'again' })],
      'already in the book',
    ],
    [
      'a phone three hours ahead',
      [filled('0451', '05:00'), loaded('0451', '09:00', { receivedAt: at('06:00') })],
      'clock ahead',
    ],
  ])('%s', (_, movements, kind) => {
    expect(kindsRaised(movements)).toContain(kind);
    expect(replay(movements).movements.size).toBe(movements.length);
  });

  it('a batch held after its drum had left is raised on the loading, and no more once the hold is corrected', () => {
    const recall: Movement = { ...batchHold, ...written('hold', '05:30', { receivedAt: at('20:00') }) };
    const held = applyMovement(replay([filled('0451', '05:00'), loaded('0451', '06:00')]), recall);
    expect(raisedIn(held).map(({ kind }) => kind)).toEqual(['held drum loaded']);
    expect(raisedIn(applyMovement(held, corrected('hold', '21:00')))).toEqual([]);
  });

  it('a held drum may be carried home', () => {
    const carried = loaded('0451', '08:00', { id: 'home', place: 'STRIP', flight: 'F06', bound: 'home' });
    expect(kindsRaised([...flownOut('0451'), { ...hold, ...written('hold', '07:30') }, carried])).toEqual([]);
  });

  it('each raised thing says what and what next', () => {
    const [raised] = raisedIn(replay([...flownOut('0451'), drawn('0451', '09:00', 50, { place: 'PAD' })]));
    expect(raised).toMatchObject({ drum: '0451', place: 'PAD', movements: ['draw-0451-09:00'] });
    expect(raised!.what).toContain('where the book has the drum at STRIP');
    expect(raised!.whatNext).not.toBe('');
  });
});
