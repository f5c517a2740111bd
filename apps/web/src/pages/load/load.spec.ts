import { describe, expect, it } from 'vitest';
import type { Bar } from './bar-read.js';
import { exchanged, moveWords } from './cabin/standing.js';
import { bindsWords, edgesOf, scaleOf, ticksOf } from './legs/bar-scale.js';
import type { Totals } from './load-read.js';
import { loadedOff, loadReport, poundsTyped, unsigned } from './totals/loaded.js';

const limit = { name: 'strip landing limit', place: 'XLOR', moment: 'landing', binds: false } as const;
const bar: Bar = {
  operatingLb: 4980,
  load: [395, 396, 398, 395, 396, 398].map((lb, at) => ({ name: `044${at}`, kg: 180, lb, isDrum: true })),
  fuelOnLandingLb: 773,
  tripLb: 397,
  limits: [
    { ...limit, surface: 'dry', limitLb: 8300, spareLb: 169, holds: true, binds: true },
    { ...limit, surface: 'soft', limitLb: 7600, spareLb: -531, holds: false },
  ],
  forbiddenBy: null,
  boundByCount: { name: 'drum positions', aboard: 6, most: 6 },
  forbiddenWhenSoft: null,
  drums: 6,
  drumPositions: 6,
  relax: '',
};

describe('payload bar', () => {
  it('adds its blocks up to where each weight ends', () => {
    expect(edgesOf(bar)).toEqual({ operating: 4980, 'zero fuel': 7358, landing: 8131, 'take-off': 8528 });
  });
  it('names the limit that binds with what it leaves dry and soft: positions where all are taken, as on Week', () => {
    expect(bindsWords(bar)).toBe(
      'drum positions, 6 of 6; nearest weight XLOR strip landing limit, 169 lb spare dry, 531 lb over soft.',
    );
    expect(bindsWords({ ...bar, boundByCount: null })).toBe(
      'XLOR strip landing limit, 169 lb spare dry, 531 lb over soft. Drum positions 6 of 6.',
    );
  });
  it('where nobody knows the surface the soft landing binds, with what it leaves as planned', () => {
    const [dry, soft] = bar.limits.filter(({ name }) => name === 'strip landing limit');
    const unknown = [
      { ...dry!, spareLb: 932, binds: false },
      { ...soft!, spareLb: 232, holds: true, binds: true },
    ];
    expect(bindsWords({ ...bar, limits: unknown })).toBe(
      'drum positions, 6 of 6; nearest weight XLOR strip landing limit, 932 lb spare dry, 232 lb spare soft.',
    );
  });
  it('tells the soft landing beside another limit that binds only where it would be the nearer', () => {
    const takeOff = { name: 'max take-off weight', place: null, moment: 'take-off', surface: null } as const;
    const nearest = { ...takeOff, limitLb: 8550, spareLb: 22, holds: true, binds: true };
    const withSoft = (spareLb: number): Bar => ({
      ...bar,
      boundByCount: null,
      limits: [
        nearest,
        { ...limit, surface: 'dry', limitLb: 8900, spareLb: 769, holds: true },
        { ...limit, surface: 'soft', limitLb: 8131 + spareLb, spareLb, holds: spareLb >= 0 },
      ],
    });
    expect(bindsWords(withSoft(69))).toBe('max take-off weight, 22 lb spare. Drum positions 6 of 6.');
    expect(bindsWords(withSoft(-31))).toBe(
      'max take-off weight, 22 lb spare; XLOR strip landing limit soft, 31 lb over. Drum positions 6 of 6.',
    );
  });
  it('has a figure at every 500 lb within its scale', () => {
    const scale = scaleOf([bar]);
    const figures = ticksOf(scale).filter(({ figure }) => figure);
    expect(figures.map(({ lb }) => lb)).toEqual([4500, 5000, 5500, 6000, 6500, 7000, 7500, 8000, 8500]);
  });
});

describe('drums that change places', () => {
  const placed = [
    { drum: '0447', position: 'R1L' },
    { drum: '0448', position: 'R1R' },
  ];
  it('go where the other stood, or to an empty place', () => {
    expect(moveWords(placed, exchanged(placed, 'R1L', 'R1R'))).toBe('0447 to R1R, 0448 to R1L');
    expect(moveWords(placed, exchanged(placed, 'R1L', 'R3L'))).toBe('0447 to R3L');
  });
});

describe('Loaded', () => {
  const flight = { state: 'given', toleranceLb: 10 };
  const agreed = { agrees: true, differenceLb: 0 } as Totals;
  const apart = { agrees: false, differenceLb: 270 } as Totals;
  const named = { ...unsigned, loadedBy: 'T. Orrin', checkedBy: 'K. Aske' };
  it('waits while two totals differ, until the commander signs with a reason', () => {
    const totals = { load: agreed, takeOff: apart };
    expect(loadedOff(flight, totals, named)).toContain('differ by 270 lb');
    const signed = { ...named, signedBy: 'FW3', reason: 'scale is out' };
    expect(loadedOff(flight, totals, signed)).toBeUndefined();
    expect(loadedOff(flight, totals, { ...signed, signedBy: 'k. aske' })).toContain('takes two people');
  });
  it('asks for both totals and both names', () => {
    expect(loadedOff(flight, { load: undefined, takeOff: agreed }, named)).toContain('by hand');
    expect(loadedOff(flight, { load: agreed, takeOff: agreed }, unsigned)).toContain('who loaded it');
    expect(loadedOff(flight, { load: agreed, takeOff: agreed }, named)).toBeUndefined();
  });
  it('says that it stands so in the aeroplane only where somebody has pressed that', () => {
    const total = { ...agreed, bySheetLb: 2378, typedLb: 2378 };
    const load = { sheet: { drums: [{ number: '0447', leaveAt: 'XLOR' }] } };
    const report = (allTheSame: boolean) =>
      loadReport({
        ...{ flight: { id: 'F05', version: 2, load }, signatures: named },
        ...{ totals: { load: total, takeOff: total }, bySoftFigures: false, allTheSame },
        ...{ at: '2027-06-14T06:00Z', idOf: (drum) => drum },
      });
    expect(report(true)).toMatchObject({ allTheSame: true, drums: [{ drum: '0447', to: 'XLOR' }] });
    expect(report(false)).not.toHaveProperty('allTheSame');
  });
  it('reads whole pounds only', () => {
    expect([poundsTyped('8,528'), poundsTyped('8528'), poundsTyped('85.2'), poundsTyped('')]).toEqual([
      8528,
      8528,
      undefined,
      undefined,
    ]);
  });
});
