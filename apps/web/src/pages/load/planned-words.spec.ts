import { describe, expect, it } from 'vitest';
import type { Bar } from './bar-read.js';
import type { Planned } from './load-read.js';
import { pickedWords, toDoNext } from './planned-words.js';

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
});
