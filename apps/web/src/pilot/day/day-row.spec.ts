import { pounds } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { legWords } from '../leg/leg-words.js';
import { exampleFlight } from '../testing/example-flight.js';
import { dayRow } from './day-row.js';

describe('the list of the day', () => {
  const none = { drums: [], downAt: null };
  const at = { place: 'XGAN', leg: 1, at: '', condition: 'sound' } as const;
  const left = (drum: string) => ({ ...at, drum, id: drum, kind: 'left at' }) as const;
  const stop = exampleFlight.stops[0]!;
  const heavy = {
    ...exampleFlight,
    stops: [{ ...stop, planned: { arrivalLb: pounds(7911), overLb: pounds(11) } }],
  };

  it('says of a surface that counts as soft what the card says, with the surface named', () => {
    for (const softCounts of [true, false]) {
      const { leave, binds } = legWords(heavy, 0, softCounts)!;
      expect(dayRow(heavy, none, softCounts)).toEqual({
        drums: '3 drums',
        lines: [
          { of: 'Binds', words: `${binds.main}, ${binds.rest}` },
          { of: null, words: leave!.main },
        ],
      });
    }
    expect(dayRow(heavy, none, true).lines[1]!.words).toBe('Stay: 511 lb too heavy, soft');
    expect(dayRow(heavy, none, false).lines[1]!.words).toBe('Stay: 11 lb too heavy, dry');
  });

  it('after a report it says what is still aboard, and no weight of the plan', () => {
    const back = { ...at, drum: '0437', id: '0437', leg: 2, place: 'XMER', kind: 'brought home' } as const;
    const drums = [left('0434'), left('0435'), back];
    expect(dayRow(heavy, { drums, downAt: null }, true)).toEqual({
      drums: '1 still aboard',
      lines: [{ of: null, words: '2 left, 1 brought back, by this phone' }],
    });
    expect(dayRow(heavy, { drums, downAt: '2027-06-15T09:00Z' }, true).drums).toBe('3 drums');
  });
});
