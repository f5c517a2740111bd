import { geodesic } from '@drumline/network';
import { kilometresFromNauticalMiles } from '@drumline/units';
import { describe, expect, it } from 'vitest';

const at = (latitudeDeg: number, longitudeDeg: number) => ({ latitudeDeg, longitudeDeg });
const dms = (degrees: number, minutes: number, seconds: number) =>
  Math.sign(degrees) * (Math.abs(degrees) + minutes / 60 + seconds / 3600);
const metres = (line: ReturnType<typeof geodesic>) => kilometresFromNauticalMiles(line.distanceNm) * 1000;
const within = (actual: number, expected: number, tolerance: number) =>
  expect(Math.abs(actual - expected), `${actual} against ${expected}`).toBeLessThanOrEqual(tolerance);

describe('geodesics on WGS84', () => {
  // Flinders Peak to Buninyong: worked example of Vincenty's inverse formula, ga.gov.au vincenty_inverse. Its bearing at
  // the far end is quoted backwards.
  it('GEO-1: Flinders Peak to Buninyong', () => {
    const line = geodesic(
      at(dms(-37, 57, 3.7203), dms(144, 25, 29.5244)),
      at(dms(-37, 39, 10.1561), dms(143, 55, 35.3839)),
    );
    const hundredthOfASecond = 0.01 / 3600;
    within(metres(line), 54972.271, 0.001);
    within(line.bearingAtStartDeg + 360, dms(306, 52, 5.37), hundredthOfASecond);
    within(line.bearingAtEndDeg + 180, dms(127, 10, 25.07), hundredthOfASecond);
    within(line.bearingAtStartDeg + 360, 306.8681592, 1e-6);
    within(line.bearingAtEndDeg + 180, 127.1736306, 1e-6);
  });

  // A worked example of Vincenty's inverse formula in common use, in WGS84.
  it("GEO-2: Land's End to John o' Groats", () => {
    const line = geodesic(at(50.06632, -5.71475), at(58.64402, -3.07009));
    within(metres(line), 969954.166, 0.001);
    within(line.bearingAtStartDeg, 9.1419, 5e-5);
    within(line.bearingAtEndDeg, 11.2972, 5e-5);
  });

  // C. F. F. Karney, Test set for geodesics; lines as in github.com/geographiclib/geographiclib-python @045fa3d,
  // geographiclib/test/test_geodesic.py, to the digits a number holds. The last crosses the 180th meridian.
  it.each([
    [35.60777, -139.44815, 111.09874842956033, -11.17491, -69.95921, 129.28927088970877, 8935244.56048183],
    [55.52454, 106.05087, 22.0200598809828, 77.03196, 197.18234, 109.11204111067151, 4105086.171392441],
    [-21.97856, 142.59065, -32.44456876433189, 41.84138, 98.56635, -41.84359951440466, 8394328.894657671],
    [-68.82867, -74.28391, 93.77434776311487, -50.63005, -8.36685, 34.65564085411343, 3956936.926063544],
    [-19.79938, -174.47484, 71.16727578017154, -11.99349, -154.35109, 65.58909977519923, 2319004.860116939],
  ])('GEO-3: from %d %d', (lat1, lon1, start, lat2, lon2, end, distance) => {
    const line = geodesic(at(lat1, lon1), at(lat2, lon2));
    within(metres(line), distance, 1e-6);
    within(line.bearingAtStartDeg, start, 1e-8);
    within(line.bearingAtEndDeg, end, 1e-8);
  });

  // Quoted beside the same test set; Vincenty's formula does not converge on the second, so it has no figure.
  it('GEO-3: nearly antipodal places have a distance', () => {
    within(metres(geodesic(at(0, 0), at(0.5, 179.5))), 19936288.579, 0.001);
    const far = metres(geodesic(at(0, 0), at(0.5, 179.7)));
    expect(far).toBeGreaterThan(19936288.579);
    expect(far).toBeLessThan(Math.PI * 6378137);
  });
});
