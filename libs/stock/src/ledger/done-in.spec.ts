import { describe, expect, it } from 'vitest';
import { drawnOn } from './done-in.js';
import { corrected, drawn, received } from './example-movements.js';
import type { Movement } from './movement.js';
import { replay } from './replay.js';

const today = '2027-06-14';
const litresOn = (movements: readonly Movement[], day = today, timeZone = 'Etc/GMT') =>
  drawnOn(replay([received('1', '05:00'), ...movements]), day, timeZone).map(({ litres }) => litres);

describe('left to do: what was drawn on a day', () => {
  it('each draw with its place and programme', () => {
    expect(drawnOn(replay([received('1', '05:00'), drawn('1', '07:00', 60)]), today, 'Etc/GMT')).toEqual([
      { date: today, place: 'STRIP', litres: 60, for: 'P1' },
    ]);
  });

  it('the same draw sent twice counts once', () => {
    const draw = drawn('1', '07:00', 60);
    expect(litresOn([draw, draw])).toEqual([60]);
  });

  it('one that was taken back does not count', () => {
    const draw = drawn('1', '07:00', 60);
    expect(litresOn([draw, corrected(draw.id, '08:00'), drawn('1', '08:00', 70)])).toEqual([70]);
  });

  it('nor one for a medevac', () => {
    expect(litresOn([drawn('1', '07:00', 60, { medevac: 'fall at the ridge' })])).toEqual([]);
  });

  it('the day is the local one', () => {
    const late = drawn('1', '23:30', 60);
    expect(litresOn([late], '2027-06-14', 'Etc/GMT-1')).toEqual([]);
    expect(litresOn([late], '2027-06-15', 'Etc/GMT-1')).toEqual([60]);
  });
});
