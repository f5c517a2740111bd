import { scenarioSchema, shapeFaults } from '@drumline/contract';
import { type AircraftRating, type LoadFactors, strapShare, tieDown } from '@drumline/loading';
import { kilograms, kilogramsFromPounds, pounds, poundsFromKilograms } from '@drumline/units';
import { describe, expect, it } from 'vitest';

const rated = (ultimateLb: number, reference: string): AircraftRating => ({
  figure: 'ultimate load in an aircraft',
  ultimateLb: pounds(ultimateLb),
  reference,
});
const strap = rated(5000, 'ISO 16049-1 scope: 22,250 N ultimate');
const angles = { aboveFloorDeg: 30, offAxisDeg: 30 };
const needOf = (load: ReturnType<typeof tieDown>, direction: string) =>
  load.needs.find((one) => one.direction === direction)!;

// RES-5: computed from the geometry of a straight strap.
describe('share of a strap', () => {
  it.each([
    [30, 30, 0.75, 0.433, 0.5],
    [45, 45, 0.5, 0.5, Math.SQRT1_2],
    [30, 0, 0.866, 0, 0.5],
    [60, 0, 0.5, 0, 0.866],
  ])('%d degrees up and %d off the axis', (aboveFloorDeg, offAxisDeg, along, across, up) => {
    const share = strapShare({ aboveFloorDeg, offAxisDeg });
    expect(Math.abs(share.along - along)).toBeLessThanOrEqual(0.0005);
    expect(Math.abs(share.across - across)).toBeLessThanOrEqual(0.0005);
    expect(Math.abs(share.up - up)).toBeLessThanOrEqual(0.0005);
  });

  // RES-6: ridertailgate.com/tie-down-tension/, worked angle examples.
  it.each([
    [150, 65, 63],
    [150, 45, 106],
    [251, 65, 106],
  ])('%d lb at %d degrees up pull %d lb along the floor', (tension, aboveFloorDeg, lateral) => {
    expect(
      Math.abs(tension * strapShare({ aboveFloorDeg, offAxisDeg: 0 }).along - lateral),
    ).toBeLessThanOrEqual(1);
  });

  it('251 lb at 65 degrees up pull 227 lb down', () => {
    expect(Math.abs(251 * strapShare({ aboveFloorDeg: 65, offAxisDeg: 0 }).up - 227)).toBeLessThanOrEqual(1);
  });
});

describe('four drums of 184 kg in a small turboprop', () => {
  // RES-1: TM 55-1510-215-10, para 6-25: 9.0 forward, 1.5 side, 1.5 rear, 3.0 up; its floor rings take 2,000 lb.
  // aviationmiscmanuals.tpub.com/TM-55-1510-215-10/TM-55-1510-215-100180.htm
  const factors: LoadFactors = { forward: 9, aft: 1.5, sideways: 1.5, up: 3, reference: 'TM para 6-25' };
  const load = poundsFromKilograms(kilograms(4 * 184));
  const ring = rated(2000, 'TM para 6-25, any direction');

  // RES-8: computed: 9 x 736 = 6,624 kgf forward, 1,104 sideways, 2,208 up.
  it('RES-8: 6,624 kg forward, 1,104 kg sideways, 2,208 kg up', () => {
    const down = tieDown(load, factors, { strap, fitting: strap, floorRing: ring, angles });
    const neededKg = (direction: string) => kilogramsFromPounds(needOf(down, direction).neededLb);
    expect(neededKg('forward')).toBeCloseTo(6624, 6);
    expect((neededKg('forward') * 9.80665) / 1000).toBeCloseTo(65, 1);
    expect(neededKg('sideways')).toBeCloseTo(1104, 6);
    expect(neededKg('up')).toBeCloseTo(2208, 6);
  });

  it('RES-8: 4 straps forward by the strap alone, 10 by the floor rings', () => {
    const strapOnly = tieDown(load, factors, { strap, fitting: strap, floorRing: strap, angles });
    const byRing = tieDown(load, factors, { strap, fitting: strap, floorRing: ring, angles });
    expect(kilogramsFromPounds(needOf(strapOnly, 'forward').eachLb)).toBeCloseTo(1701, 0);
    expect(kilogramsFromPounds(needOf(byRing, 'forward').eachLb)).toBeCloseTo(680.4, 1);
    expect([needOf(strapOnly, 'forward').straps, needOf(byRing, 'forward').straps]).toEqual([4, 10]);
    expect(byRing.deciding.part).toBe('floor ring');
  });

  // RES-2: 14 CFR 25.561(b)(3), pilotfriend.com/FARS/10/Sec. 25.561.htm: up 3, forward 9, side 3, rear 1.5.
  it('RES-2: transport-category factors ask twice the sideways restraint', () => {
    const transport: LoadFactors = {
      forward: 9,
      aft: 1.5,
      sideways: 3,
      up: 3,
      reference: '14 CFR 25.561(b)(3)',
    };
    const down = tieDown(load, transport, { strap, fitting: strap, floorRing: ring, angles });
    expect(kilogramsFromPounds(needOf(down, 'sideways').neededLb)).toBeCloseTo(2208, 6);
  });

  // RES-9: road rules ask 0.8 g forward by breaking strength, or half the weight in working loads (49 CFR 393.102, 393.106;
  // worked at ddsling.com/products/cargo-control/: 24,000 lb, working load 3,335 lb, 4 straps). 0.8 g is no 9 g.
  it('RES-9: road working loads, four of which would do for 24,000 lb on a truck, are refused', () => {
    expect(Math.ceil(24_000 / 2 / 3335)).toBe(4);
    const road = { figure: 'working load for the road', workingLoadLb: 3335 };
    const setting = { type: 'A', factors, kit: { strap: road, fitting: strap, floorRing: ring, angles } };
    expect(shapeFaults(scenarioSchema.shape.tieDown, [setting])).toMatchObject([
      { path: '[0].kit.strap.figure', remedy: expect.stringContaining('no aircraft restraint') },
    ]);
  });
});
