import { nauticalMiles } from '@drumline/units';
import fc from 'fast-check';
import geographiclib from 'geographiclib-geodesic';
import { describe, expect, it } from 'vitest';
import { distanceTable, distanceToLeg, geodesic } from './distance.js';

const strip = (code: string, latitudeDeg: number, longitudeDeg: number) => ({
  code,
  latitudeDeg,
  longitudeDeg,
});

const position = fc.record({
  latitudeDeg: fc.double({ min: -85, max: 85, noNaN: true }),
  longitudeDeg: fc.double({ min: -180, max: 180, noNaN: true }),
});

describe('distances', () => {
  const places = [strip('ASH', 65, -4), strip('BEK', 66, -4), strip('COL', 65, -2)];

  it('distances: a given distance wins over the computed geodesic, both ways', () => {
    const distance = distanceTable(places, [{ between: ['ASH', 'BEK'], distanceNm: nauticalMiles(71) }]);
    expect(distance('ASH', 'BEK')).toBe(71);
    expect(distance('BEK', 'ASH')).toBe(71);
    expect(distance('ASH', 'COL')).toBe(geodesic(places[0]!, places[2]!).distanceNm);
    expect(distance('COL', 'ASH')).toBe(distance('ASH', 'COL'));
    expect(distance('ASH', 'ASH')).toBe(0);
  });

  it('a degree of latitude is about 60 NM', () => {
    expect(distanceTable(places, [])('ASH', 'BEK')).toBeCloseTo(60.2, 1);
  });

  it('a code that is not a place is refused', () => {
    expect(() => distanceTable(places, [])('ASH', 'NIL')).toThrow(/NIL.*not a place/);
  });
});

describe('distance of a position from a leg', () => {
  // Legs of a light aeroplane: up to some 600 NM.
  const leg = fc
    .tuple(position, fc.double({ min: -8, max: 8, noNaN: true }), fc.double({ min: -8, max: 8, noNaN: true }))
    .map(([from, north, east]) => ({
      from,
      to: {
        latitudeDeg: Math.min(Math.max(from.latitudeDeg + north, -85), 85),
        longitudeDeg: from.longitudeDeg + east,
      },
    }));
  const near = fc.tuple(
    fc.double({ min: -6, max: 6, noNaN: true }),
    fc.double({ min: -6, max: 6, noNaN: true }),
  );

  it('is the least distance to its points', () => {
    fc.assert(
      fc.property(leg, near, ({ from, to }, [north, east]) => {
        const centre = {
          latitudeDeg: Math.min(Math.max(from.latitudeDeg + north, -89), 89),
          longitudeDeg: from.longitudeDeg + east,
        };
        const found = distanceToLeg(centre, from, to);
        const ends = [from, to].map((end) => geodesic(centre, end).distanceNm);
        expect(found).toBeLessThanOrEqual(Math.min(...ends) + 1e-6);
        const line = pointsAlong(from, to, 200);
        const sampled = Math.min(...line.map((point) => geodesic(centre, point).distanceNm));
        const spacing = geodesic(from, to).distanceNm / 200;
        expect(found).toBeLessThanOrEqual(sampled + 1e-6);
        expect(found).toBeGreaterThanOrEqual(sampled - spacing);
      }),
      { numRuns: 60 },
    );
  });
});

/** Points of the leg at even spacing, both ends included. */
const pointsAlong = (
  from: { latitudeDeg: number; longitudeDeg: number },
  to: { latitudeDeg: number; longitudeDeg: number },
  count: number,
) => {
  const line = geographiclib.Geodesic.WGS84.InverseLine(
    from.latitudeDeg,
    from.longitudeDeg,
    to.latitudeDeg,
    to.longitudeDeg,
  );
  return Array.from({ length: count + 1 }, (_, index) => {
    const point = line.Position((line.s13 * index) / count);
    return { latitudeDeg: point.lat2!, longitudeDeg: point.lon2! };
  });
};
