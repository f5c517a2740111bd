import { kilograms, litres } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { exampleLoad, standing } from '../named-load/example-load.js';
import { asLoaded } from './as-loaded.js';
import { exampleSheetRequest } from './example-sheet.js';
import { makeLoadSheet } from './make-load-sheet.js';

const load = {
  ...exampleLoad(['BASE', 'NEAR', 'BASE'], []),
  drums: [standing('0434', 'R1L'), standing('0435', 'R1R')],
};
const planned = exampleSheetRequest(load);
const heavier = {
  planned: '0434',
  number: '0436',
  batch: 'J27-012',
  grossKg: kilograms(load.drums[0]!.grossKg + 5),
  tareKg: load.drums[0]!.tareKg,
  litres: litres(200),
  position: 'R1L',
};

describe('a load sheet as it was loaded', () => {
  const before = makeLoadSheet(planned);
  const after = makeLoadSheet(asLoaded(planned, [heavier]));

  it('has 0436 where 0434 was planned; totals, take-off weight and code square follow', () => {
    expect(after.drums.map(({ number, position, leaveAt }) => [number, position, leaveAt])).toEqual([
      ['0436', 'R1L', 'NEAR'],
      ['0435', 'R1R', 'NEAR'],
    ]);
    // 5 kg is 11.02 lb.
    const [then, now] = [before.legs[0]!.totals, after.legs[0]!.totals];
    expect(now.loadLb - then.loadLb).toBe(11);
    expect(now.takeoffLb - then.takeoffLb).toBe(11);
    expect(now.items[0]!.name).toBe('0436 in R1L');
    expect(after.square).toMatch(/^R1L 0436 /m);
    expect(after.square).not.toContain('0434');
    expect(after.checkCode).not.toBe(before.checkCode);
  });

  it('has the same totals when two drums have changed places', () => {
    const [left, right] = load.drums;
    const swapped = makeLoadSheet(
      asLoaded(planned, [
        { ...left!, planned: left!.number, position: right!.position },
        { ...right!, planned: right!.number, position: left!.position },
      ]),
    );
    expect(swapped.drums.map(({ number }) => number)).toEqual(['0435', '0434']);
    expect(swapped.legs[0]!.totals.loadLb).toBe(before.legs[0]!.totals.loadLb);
  });

  it('in the place of a drum that is not on the load is a bug of the caller', () => {
    expect(() => asLoaded(planned, [{ ...heavier, planned: '0999' }])).toThrow('0999 is not on the load');
  });
});
