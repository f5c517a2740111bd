import { describe, expect, it } from 'vitest';
import { dates, dayName, falling, levels } from '../testing/example-caches.js';
import { touchedRows } from './consequence-rows.js';
import { overRoom } from './minimum-form.js';
import { litresAfter } from './programme-read.js';

describe('a change before it is made', () => {
  it('a minimum above the room of its place is refused before the press, with the room', () => {
    expect(overRoom(30, 99_999, 200)).toBe(
      '99,999 L does not fit on a site for 30 drums, 6,000 L: lower it, or correct the capacity at Set-up.',
    );
    expect([overRoom(30, 6000, 200), overRoom(30, undefined, 200)]).toEqual([undefined, undefined]);
  });

  it('3 h more at MAR: 39 L for 375 L on day 3, and that it was short before', () => {
    const course = { minimumLitres: 400, criticalLitres: 200 };
    const [row] = touchedRows(
      {
        items: [
          {
            place: 'XMAR',
            before: { ...course, levels: falling.offered },
            after: {
              ...course,
              levels: levels([600, 600, 600, 39], { belowMinimumDay: 3, belowCriticalDay: 3 }),
            },
          },
        ],
      },
      dayName,
    );
    expect(row).toMatchObject({ place: 'XMAR', day: 3, before: 375, after: 39 });
    expect(row!.words).toBe(
      'below minimum day 16, below critical day 16 (minimum 400 L, critical 200 L); before the change already below minimum day 16.',
    );
  });

  it('more hours burn by the litres an hour of the helicopter', () => {
    const task = { date: dates[2]!, helicopter: 'H1', programme: 'P1', place: 'XMAR', hours: 2, litres: 225 };
    expect(litresAfter(task, 5, 112)).toBe(225 + 336);
  });
});
