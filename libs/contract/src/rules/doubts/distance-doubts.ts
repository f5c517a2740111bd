import type { Position } from '@drumline/network';
import { printFigure } from '../print-figure.js';
import { each, type Finding, type Rule } from '../rule.js';

const earthRadiusNm = 3440.1;
const mostDifferencePercent = 20;

/** Given distances that lie far from the great circle: a slip of the pen, or kilometres for nautical miles. */
export const distanceDoubts: readonly Rule[] = [
  each('distances', ['places'], ({ between: [from, to], distanceNm }, { places }) =>
    farOff(from, to, distanceNm, places),
  ),
  each('slings', ['places'], ({ from, to, distanceNm }, { places }) => farOff(from, to, distanceNm, places)),
];

function* farOff(
  from: string,
  to: string,
  givenNm: number,
  places: readonly (Position & { readonly code: string })[],
): Iterable<Finding> {
  const [start, end] = [from, to].map((code) => places.find((place) => place.code === code));
  if (start === undefined || end === undefined) return;
  const straightNm = greatCircleNm(start, end);
  if (Math.abs(givenNm - straightNm) * 100 > straightNm * mostDifferencePercent)
    yield [
      ['distanceNm'],
      `${printFigure(givenNm, 'NM')} from ${from} to ${to}, but their positions are ${straightNm.toFixed(1)} NM apart.`,
      'Look at the distance, its unit and the two positions.',
    ];
}

/** Haversine on a sphere: within 0.6 % of the ellipsoid, plenty to find a slip. */
const greatCircleNm = (a: Position, b: Position): number => {
  const radians = (degrees: number) => (degrees * Math.PI) / 180;
  const half = (degrees: number) => Math.sin(radians(degrees) / 2) ** 2;
  const chord =
    half(b.latitudeDeg - a.latitudeDeg) +
    Math.cos(radians(a.latitudeDeg)) *
      Math.cos(radians(b.latitudeDeg)) *
      half(b.longitudeDeg - a.longitudeDeg);
  return 2 * earthRadiusNm * Math.asin(Math.sqrt(Math.min(1, chord)));
};
