import { describe, expect, it } from 'vitest';
import type { Bar } from './bar-read.js';
import type { Planned } from './load-read.js';
import { filledSince, pickedWords, toDoNext } from './planned-words.js';

const bars = [{ drums: 5 }, { drums: 4 }, { drums: 0 }] as Bar[];
const flight = {
  id: 'F007',
  state: 'offered',
  toFill: 3,
  stops: [{ place: 'XFAL', drums: ['0431', '0432'] }],
  planned: { bars } as Planned,
  planningKg: 180,
};

describe('a flight whose drums are still to be filled', () => {
  it('says that its figures are planned, and how many drums are picked', () => {
    expect(pickedWords(flight)).toBe('Planned, 2 of 5 drums picked: 5 drums at 180 kg each');
    expect(pickedWords({ ...flight, stops: [{ place: 'XFAL', drums: [] }] })).toBe(
      'Planned, no drum picked yet: 5 drums at 180 kg each',
    );
  });
  it('says what comes first: approve it, then fill; where a drum stands in no place, amend it', () => {
    expect(toDoNext(flight)).toMatchObject({ href: '/week/F007', link: 'F007 on Week' });
    expect(toDoNext({ ...flight, state: 'approved' })).toMatchObject({ href: '/drums?view=fill' });
    expect(toDoNext({ ...flight, state: 'approved', toFill: 0 })).toMatchObject({
      href: '/week/F007',
      words: 'Amend the flight.',
    });
  });
  it('takes drums that were filled since, where one stands free at its base and it is not loaded', () => {
    const drum = { number: '0431', batch: 'J27-041', kg: 180 };
    const approved = {
      state: 'approved',
      toFill: 3,
      version: 1,
      route: ['XMER', 'XFAL', 'XMER'],
      nextOldest: [{ place: 'XFAL', drum }],
    };
    expect(filledSince(approved)).toEqual({
      press: 'Take fit drums from XMER',
      words:
        'Fit drums stand free at XMER, the oldest is 0431. Taken, they make it version 2; what is then missing stays to be filled.',
    });
    expect(filledSince({ ...approved, nextOldest: [{ place: 'XFAL', drum: null }] })).toBeNull();
    expect(filledSince({ ...approved, toFill: 0 })).toBeNull();
    expect(filledSince({ ...approved, state: 'loaded' })).toBeNull();
  });
});
