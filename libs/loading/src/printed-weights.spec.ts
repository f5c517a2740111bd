import { kilograms, nauticalMiles, pounds } from '@drumline/units';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exampleRequest, exampleType } from './example-flight.js';
import { printedLbOf, printedLegs, printedSpareLb } from './printed-weights.js';
import { routeLoad } from './route-load.js';

const printed = (request: ReturnType<typeof exampleRequest>, rowsByLeg: readonly (readonly number[])[]) =>
  printedLegs({
    operatingWeightLb: pounds(4500),
    taxiFuelLb: exampleType.taxiFuelLb,
    fuel: routeLoad(request),
    rowsByLeg: rowsByLeg.map((rows) => rows.map(pounds)),
  });

describe('Printed sums', () => {
  it('every drum is rounded by itself: 179.0 kg is 395 lb, 179.7 kg is 396 lb, 180.4 kg is 398 lb', () => {
    expect([179, 179.7, 180.4].map((kg) => printedLbOf(kilograms(kg)))).toEqual([395, 396, 398]);
  });

  it('each leg begins with the fuel that the printed one before left', () => {
    const legs = printed(exampleRequest(['BASE', 'STRIP', 'BASE'], {}, { distanceNm: nauticalMiles(70.2) }), [
      [396.4, 396.4],
      [],
    ]);
    // Trip: 70.2 / 150 x 300 + 20 = 160.4 lb, printed 160 on both legs; 792.8 lb of drums print as 2 x 396.
    expect(legs[0]).toMatchObject({ loadLb: 792, zeroFuelLb: 5292, tripLb: 160, upliftLb: 0 });
    expect(legs[1]).toMatchObject({ fuelLb: legs[0]!.fuelAtLandingLb, taxiLb: 0, loadLb: 0 });
    expect(legs[1]!.landingLb).toBe(4500 + legs[0]!.fuelLb - 30 - 320);
  });

  it('fuel taken on the way is a row of its own', () => {
    const request = exampleRequest(['BASE', 'STRIP', 'BASE'], {}, { upliftOnArrival: true });
    const exact = routeLoad(request);
    const [, home] = printed(request, [[], []]);
    expect(home!.upliftLb).toBeGreaterThan(0);
    expect(home!.fuelLb).toBe(exact.legs[1]!.fuelAtTakeoffLb);
  });

  it('never drifts from the exact weights by more than half a pound a figure', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 20, max: 450, noNaN: true }), { maxLength: 8 }), (rows) => {
        const request = exampleRequest(['BASE', 'STRIP', 'BASE']);
        const exact = routeLoad(request);
        const legs = printed(request, [rows, []]);
        const load = rows.reduce((sum, row) => sum + row, 0);
        const off = legs[0]!.landingLb - (4500 + load + exact.legs[0]!.fuelAtLandingLb);
        expect(Math.abs(off)).toBeLessThanOrEqual((rows.length + 2) / 2);
      }),
    );
  });
});

describe('room under a limit', () => {
  it('is the limit less the printed sum: 6,261 lb against 6,250 lb are 11 lb over, though exactly 6,261.59 lb', () => {
    expect(printedSpareLb(pounds(6250), pounds(6261), 6261.59)).toBe(-11);
    expect(printedSpareLb(pounds(8300), pounds(8131), 8130.7)).toBe(169);
  });

  it('is 1 lb over where only the exact sum is over', () => {
    expect(printedSpareLb(pounds(6250), pounds(6250), 6250.4)).toBe(-1);
    expect(printedSpareLb(pounds(6250), pounds(6250), 6250)).toBe(0);
  });
});
