import { inches, kilograms, pounds } from '@drumline/units';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exampleRequest, exampleType } from '../example-flight.js';
import { checkLoad } from './check-load.js';
import { exampleDrum, exampleLoad, standing } from './example-load.js';
import { placeDrums } from './place-drums.js';
import { weighLoad } from './weigh-load.js';

const there = ['BASE', 'STRIP', 'BASE'];
const aftLimit = (aftIn: number) => ({
  ...exampleRequest(there),
  type: {
    ...exampleType,
    envelope: exampleType.envelope.map((point) => ({ ...point, aftIn: inches(aftIn) })),
  },
});

describe('a load of named drums', () => {
  it('is weighed by the printed pounds of each drum, on each leg', () => {
    const [out, home] = weighLoad(
      exampleLoad(there, [
        standing('0447', 'R1L', 19),
        standing('0448', 'R1R', 19.7),
        standing('0449', 'R2L', 20.4),
      ]),
    );
    expect(out).toMatchObject({ loadLb: 395 + 396 + 398, zeroFuelLb: 4500 + 1189 });
    expect(home).toMatchObject({ loadLb: 0 });
  });

  it('has its nearest limit first', () => {
    const [out] = weighLoad(exampleLoad(there, [standing('0447', 'R1L')]));
    expect(out!.limits[0]).toMatchObject({ name: 'strip landing limit', place: 'STRIP', holds: true });
    expect(out!.limits.map(({ spareLb }) => spareLb)).toEqual(
      out!.limits.map(({ spareLb }) => spareLb).sort((a, b) => a - b),
    );
  });

  it('a limit that only the printed sum keeps does not hold', () => {
    // 180.2 kg is 397.27 lb, printed 397: four print 1,588 and weigh 1,589.1.
    const drums = ['R1L', 'R1R', 'R2L', 'R2R'].map((place, i) => standing(`${i}`, place, 20.2));
    const request = { ...exampleRequest(there), type: { ...exampleType, maxZeroFuelLb: pounds(6088) } };
    const limit = weighLoad(exampleLoad(there, drums, request))[0]!.limits.find(
      ({ name }) => name === 'max zero-fuel weight',
    )!;
    expect(limit).toMatchObject({ printedLb: 6088, spareLb: 0, holds: false });
    expect(checkLoad(exampleLoad(there, drums, request)).faults).toEqual([
      'BASE-STRIP: 1 lb over max zero-fuel weight 6,088 lb',
    ]);
  });

  it('a limit that only the exact sum keeps does not hold either', () => {
    // 180.4 kg is 397.7 lb, printed 398: four print 1,592 and weigh 1,590.8.
    const drums = ['R1L', 'R1R', 'R2L', 'R2R'].map((place, i) => standing(`${i}`, place, 20.4));
    const request = { ...exampleRequest(there), type: { ...exampleType, maxZeroFuelLb: pounds(6091) } };
    expect(checkLoad(exampleLoad(there, drums, request)).faults).toEqual([
      'BASE-STRIP: 1 lb over max zero-fuel weight 6,091 lb',
    ]);
  });

  it('a closed strip is said', () => {
    const request = exampleRequest(there, { STRIP: 'closed' });
    expect(checkLoad(exampleLoad(there, [], request)).faults[0]).toBe('BASE-STRIP: STRIP: closed');
  });
});

describe('balance with named drums', () => {
  it('a hand-made loading that fails is offered the fewest moves', () => {
    const report = checkLoad(
      exampleLoad(there, [standing('0447', 'R3L', 19), standing('0448', 'R3R', 20)], aftLimit(189)),
    );
    expect(report.holds).toBe(false);
    expect(report.mend!.text).toBe('move two drums from row 3 to row 1');
  });

  it('drums that stand well stay where they are', () => {
    const load = exampleLoad(there, []);
    const standingNow = new Map([
      ['0447', 'R2L'],
      ['0448', 'R2R'],
    ]);
    const placed = placeDrums(load, [exampleDrum('0447'), exampleDrum('0448')], standingNow);
    expect(placed.found && placed.moved).toBe(0);
    expect(placed.found && placed.drums.map(({ position }) => position)).toEqual(['R2L', 'R2R']);
  });

  it('freight in a drum position takes it from the drums', () => {
    const load = {
      ...exampleLoad(there, []),
      cargo: [{ name: 'crate', weightLb: pounds(300), place: 'R1L', firstLeg: 0, lastLeg: 0 }],
    };
    const placed = placeDrums(load, [exampleDrum('0447')]);
    expect(placed.found && placed.drums[0]!.position).not.toBe('R1L');
  });

  it('positions found hold by the exact and by the printed figures', () => {
    const tares = fc.array(fc.integer({ min: 160, max: 290 }), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(tares, fc.integer({ min: 186, max: 196 }), (list, aftIn) => {
        const load = exampleLoad(there, [], aftLimit(aftIn));
        const drums = list.map((tare, i) => ({
          ...exampleDrum(`${i}`),
          grossKg: kilograms(160 + tare / 10),
        }));
        const placed = placeDrums(load, drums);
        if (placed.found)
          expect(
            checkLoad({ ...load, drums: placed.drums }).faults.filter((text) => / in /.test(text)),
          ).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });
});
