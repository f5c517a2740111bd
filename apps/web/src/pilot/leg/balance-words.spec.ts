import { inches } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { exampleFlight } from '../testing/example-flight.js';
import { balanceOf } from './balance-words.js';

const [out, home] = exampleFlight.sheet!.legs;
const words = (leg: typeof out, forwardIn?: number) =>
  balanceOf({
    rows: leg!.rows.map((row) =>
      row.cg === null || forwardIn === undefined || row.label !== 'zero fuel'
        ? row
        : { ...row, cg: { ...row.cg, forwardIn: inches(forwardIn), inside: false } },
    ),
  });

describe('balance of a leg in words', () => {
  it('is told for each moment with its limits, on the way home too', () => {
    expect(words(out)).toMatchObject({ isInside: true, main: 'Inside' });
    for (const leg of [out, home])
      expect(words(leg).moments).toEqual([
        expect.stringMatching(/^zero fuel \d+\.\d in, limits \d+\.\d to \d+\.\d in$/),
        expect.stringMatching(/^take-off X\w+ \d/),
        expect.stringMatching(/^land X\w+, \w+ \d/),
      ]);
    expect(words(home).moments).not.toEqual(words(out).moments);
  });

  it('says which moment lies outside', () => {
    const outside = words(out, 500);
    expect(outside).toMatchObject({ isInside: false, main: 'OUTSIDE' });
    expect(outside.moments.filter((moment) => moment.endsWith(': OUTSIDE'))).toHaveLength(1);
    expect(outside.moments[0]).toMatch(/limits 500\.0 to .*: OUTSIDE$/);
  });

  it('is not known where something aboard has no place', () => {
    expect(balanceOf({ rows: out!.rows.map((row) => ({ ...row, cg: null })) })).toEqual({
      isInside: false,
      main: 'Not known',
      moments: [],
    });
  });
});
