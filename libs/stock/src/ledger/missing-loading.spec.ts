import { describe, expect, it } from 'vitest';
import { filled, leftAt, loaded } from './example-movements.js';
import { missingLoading } from './missing-loading.js';
import type { Movement } from './movement.js';
import { raisedIn } from './raised-in.js';
import { replay } from './replay.js';

const drums = ['0431', '0432', '0433'];
const delivered: readonly Movement[] = drums.flatMap((drum) => [
  filled(drum, '05:00'),
  leftAt(drum, '07:00', { id: `left ${drum}` }),
]);
const lookedAt = (...movements: readonly Movement[]) =>
  missingLoading('F05', raisedIn(replay([...delivered, ...movements])));

describe('a flight whose loading nobody reported', () => {
  it('is one thing to look at, with its drums in it, whoever reported each', () => {
    expect(lookedAt(leftAt('0433', '07:20', { id: 'second', by: 'loader' }))).toMatchObject({
      id: 'not aboard | F05',
      kind: 'not aboard',
      drum: null,
      flight: 'F05',
      what: 'F05: 3 drums came off it, and nobody has reported them loaded on it: 0431, 0432, 0433.',
      whatNext: 'Enter the loading that is missing, or correct the numbers.',
    });
  });

  it('names the one drum that is left when the others were loaded, under the same id', () => {
    const rest = lookedAt(loaded('0431', '06:00'), loaded('0433', '06:00'));
    expect([rest.id, rest.drum, rest.movements]).toEqual(['not aboard | F05', '0432', ['left 0432']]);
    expect(rest.what).toBe('F05: drum 0432 came off it, and nobody has reported it loaded on it.');
  });
});
