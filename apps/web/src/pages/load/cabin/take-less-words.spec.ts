import { describe, expect, it } from 'vitest';
import type { Fallback } from '../load-read.js';
import { leftWhenSoft, withoutDrums } from './standing.js';
import { takeLessWords } from './take-less-words.js';

const flight = {
  version: 1,
  route: ['XMER', 'XLOR', 'XGAN', 'XMER'],
  stops: [
    { place: 'XLOR', drums: ['0569'] },
    { place: 'XGAN', drums: ['0570', '0571', '0572', '0573'] },
  ],
};
const soft = (place: string, take: number | null, leave: readonly string[]): Fallback => ({
  leg: 0,
  place,
  take,
  leave: [...leave],
  moves: [],
  words: '',
  moments: [],
  drumsLb: 0,
});

describe('fewer drums for a soft strip', () => {
  it('the only drum of a stop stays: the version leaves the strip out and flies on with the rest', () => {
    for (const take of [0, null]) {
      const said = takeLessWords(flight, soft('XLOR', take, ['0569']))!;
      expect(said.title).toBe('Leave out XLOR: take 4 (all for XGAN)');
      expect(said.route).toContain('Version 2 does not land at XLOR: it flies XMER-XGAN-XMER.');
    }
    // What it is sent as.
    expect(withoutDrums(flight, ['0569']).map(({ place, drums }) => [place, drums])).toEqual([['XGAN', 4]]);
  });

  it('some of a stop stay: how many go, and which they are for', () => {
    const said = takeLessWords(flight, soft('XGAN', 3, ['0573']))!;
    expect(said).toMatchObject({ title: 'Take 4 (1 for XLOR, 3 for XGAN): leave 0573', route: null });
    const one = { ...flight, stops: [flight.stops[1]!] };
    expect(takeLessWords(one, soft('XGAN', 3, ['0573']))!.title).toBe('Take 3: leave 0573');
  });

  it('nothing would go: there is no version to make', () => {
    const one = { ...flight, stops: [flight.stops[0]!] };
    expect(takeLessWords(one, soft('XLOR', null, ['0569']))).toBeNull();
  });

  it('drums that stay say at which of two strips, when it is soft', () => {
    const fallbacks = [soft('XLOR', 0, ['0569']), soft('XGAN', 3, ['0573'])];
    expect([...leftWhenSoft({ fallbacks }, flight)]).toEqual([
      ['0569', 'leave if XLOR is soft'],
      ['0573', 'leave if XGAN is soft'],
    ]);
  });
});
