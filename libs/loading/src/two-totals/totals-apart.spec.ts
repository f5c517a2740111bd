import { pounds } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { sheetOf } from '../load-sheet/example-sheet.js';
import { exampleLoad, standing } from '../named-load/example-load.js';
import { areTwoPeople, totalsApart } from './totals-apart.js';

const drums = [standing('0447', 'R1L', 19), standing('0448', 'R1R', 19.7)];
const { totals } = sheetOf(exampleLoad(['BASE', 'NEAR', 'BASE'], drums)).legs[0]!;
const reported = (byHandLb: number, byAircraftLb: number = totals.takeoffLb) => ({
  load: { bySheetLb: totals.loadLb, byHandLb: pounds(byHandLb) },
  takeOff: { bySheetLb: totals.takeoffLb, byAircraftLb: pounds(byAircraftLb) },
});
const at = { totals, otherDrums: [] };

describe('two totals of a loading that is reported', () => {
  it('within the tolerance are not apart', () => {
    expect(totalsApart(reported(totals.loadLb + 10), at, pounds(10))).toEqual([]);
  });

  it('apart are told by their pair, with the slip that the sheet explains', () => {
    // 0448 weighs 179.7 kg, 396 lb.
    const [pair, ...more] = totalsApart(reported(totals.loadLb - 396), at, pounds(10));
    expect(pair!.pair).toBe('load');
    expect(pair!.words).toMatch(/^Load, by the sheet and by hand: .*396 lb apart; 10 lb is accepted\..*0448/);
    expect(more).toEqual([]);
    const both = totalsApart(reported(totals.loadLb - 396, totals.takeoffLb - 90), at, pounds(10));
    expect(both.map((each) => each.pair)).toEqual(['load', 'takeOff']);
  });

  it('without a sheet the figures alone are compared', () => {
    const [pair] = totalsApart(reported(totals.loadLb - 396), null, pounds(10));
    expect(pair!.words).toContain('396 lb apart');
    expect(pair!.words).not.toContain('0448');
  });

  it('are signed for by two people: not by one under two spellings, nor by one and nobody', () => {
    expect(areTwoPeople('A. Pilot', 'S. Keeper')).toBe(true);
    expect(areTwoPeople('A. Pilot', ' a. pilot')).toBe(false);
    expect(areTwoPeople('A. Pilot', ' ')).toBe(false);
  });
});
