import { kilometres, type NauticalMiles, nauticalMilesFromKilometres } from '@drumline/units';
import geographiclib from 'geographiclib-geodesic';
import type { GivenDistance, LocatedPlace, Position } from './place.js';

const wgs84 = geographiclib.Geodesic.WGS84;

/** Shortest line over the WGS84 ellipsoid (C. F. F. Karney, Algorithms for geodesics, J. Geodesy 87, 2013). */
export interface Geodesic {
  readonly distanceNm: NauticalMiles;
  /** True bearings at either end, -180 to 180 degrees, along the line from the first position to the second. */
  readonly bearingAtStartDeg: number;
  readonly bearingAtEndDeg: number;
}

/** The geodesic from one position to another, in nautical miles and degrees. */
export const geodesic = (from: Position, to: Position): Geodesic => {
  const line = wgs84.Inverse(from.latitudeDeg, from.longitudeDeg, to.latitudeDeg, to.longitudeDeg);
  return {
    distanceNm: nauticalMilesFromKilometres(kilometres(line.s12! / 1000)),
    bearingAtStartDeg: line.azi1!,
    bearingAtEndDeg: line.azi2!,
  };
};

/** Least distance from a position to any point of the leg line from `from` to `to`, in nautical miles. */
export const distanceToLeg = (position: Position, from: Position, to: Position): NauticalMiles => {
  const leg = wgs84.InverseLine(from.latitudeDeg, from.longitudeDeg, to.latitudeDeg, to.longitudeDeg);
  let along = 0;
  // Steps to the foot of the perpendicular as a sphere would have it, held to the leg; on the ellipsoid a few rounds
  // bring it within a millimetre.
  for (let round = 0; round < 10; round++) {
    const foot = leg.Position(along);
    const toPosition = wgs84.Inverse(foot.lat2!, foot.lon2!, position.latitudeDeg, position.longitudeDeg);
    const angle = ((toPosition.azi1! - foot.azi2!) * Math.PI) / 180;
    const away = toPosition.s12! / wgs84.a;
    const step = wgs84.a * Math.atan2(Math.sin(away) * Math.cos(angle), Math.cos(away));
    const next = Math.min(Math.max(along + step, 0), leg.s13);
    if (Math.abs(next - along) < 0.001) break;
    along = next;
  }
  const nearest = leg.Position(along);
  return geodesic(position, { latitudeDeg: nearest.lat2!, longitudeDeg: nearest.lon2! }).distanceNm;
};

/** Distance between two places by code, in nautical miles. Throws an Error for a code that is not a place. */
export type DistanceTable = (from: string, to: string) => NauticalMiles;

/** Distances between places: the operator's given distance, valid both ways, else the WGS84 geodesic. */
export const distanceTable = (
  places: readonly LocatedPlace[],
  given: readonly GivenDistance[],
): DistanceTable => {
  const placeOf = new Map(places.map((place) => [place.code, place]));
  const find = (code: string): LocatedPlace => {
    const place = placeOf.get(code);
    if (!place)
      throw new Error(`No distance to ${code}: it is not a place of the scenario; add it to the places.`);
    return place;
  };
  const known = new Map(given.map(({ between: [a, b], distanceNm }) => [pair(a, b), distanceNm]));
  return (from, to) => {
    const key = pair(from, to);
    const distance = known.get(key) ?? geodesic(find(from), find(to)).distanceNm;
    known.set(key, distance);
    return distance;
  };
};

const pair = (a: string, b: string): string => (a < b ? `${a} ${b}` : `${b} ${a}`);
