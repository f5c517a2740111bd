import { pounds } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { totalsApart } from './two-totals.js';

const totals = (byAircraft: number, byHand = 2378) => ({
  load: { bySheetLb: pounds(2378), byHandLb: pounds(byHand) },
  takeOff: { bySheetLb: pounds(8528), byAircraftLb: pounds(byAircraft) },
});
const apart = (byAircraft: number, byHand?: number) => totalsApart(totals(byAircraft, byHand), pounds(10));

describe('two totals', () => {
  it('that are the same agree, and so do those a tolerance apart', () => {
    expect(apart(8528)).toEqual([]);
    expect(apart(8538, 2368)).toEqual([]);
    expect(apart(8539).map(({ pair }) => pair)).toEqual(['takeOff']);
  });

  it('with two digits swapped are 270 lb apart: both figures and the arithmetic, and no word of which is right', () => {
    expect(apart(8258)).toEqual([
      {
        pair: 'takeOff',
        apartLb: 270,
        words:
          'Take-off weight: 8,528 lb by the sheet, 8,258 lb by the aircraft. 8,528 lb less 8,258 lb is 270 lb; 10 lb is accepted.',
      },
    ]);
  });

  it('are two pairs, each looked at by itself', () => {
    expect(apart(8258, 2738).map(({ pair, apartLb }) => [pair, apartLb])).toEqual([
      ['load', 360],
      ['takeOff', 270],
    ]);
  });
});
