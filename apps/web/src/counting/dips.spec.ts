import { describe, expect, it } from 'vitest';
import { readDips } from './dips.js';
import { upright } from './example-dip-table.js';

describe('sticks as they are typed', () => {
  it.each(['34, 51.5', '34 51.5', '34cm; 51,5 cm'])('"%s" is two drums', (typed) => {
    expect(readDips(typed.replace(' cm', 'cm'), upright)).toEqual({
      litres: 220,
      drums: 2,
      words: expect.stringMatching(/^34 cm = 87 L, ± 1\.3 L; 51\.5 cm = 132 L, ± 1\.3 L$/),
    });
  });

  it('a stick that is longer than the drum is asked back', () => {
    expect(readDips('34, 90', upright)).toEqual({
      drums: 2,
      words: 'No upright drum is deeper than 84.1 cm.',
    });
  });

  it('what is no figure is named; nothing is nothing', () => {
    expect(readDips('34, half', upright).words).toBe('half is no figure of a stick: write 34 or 34.5.');
    expect(readDips(' ', upright)).toEqual({ drums: 0, words: '' });
  });
});
