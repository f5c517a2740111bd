import { geoInterpolate, geoMercator } from 'd3-geo';

export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface Box extends Point {
  readonly width: number;
  readonly height: number;
}

export interface Spot {
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
}

/** Where things stand on a chart, north up. On Mercator's projection a line of the compass is straight. */
export interface ChartScale {
  /** Inside the border. */
  readonly frame: Box;
  readonly at: (spot: Spot) => Point;
  /** Points of the shortest line between two places. */
  readonly along: (from: Spot, to: Spot) => readonly Point[];
  /** Of a degree of the frame's edges: counted on past 180 E, so that they only grow. */
  readonly edges: {
    readonly west: number;
    readonly east: number;
    readonly south: number;
    readonly north: number;
  };
  readonly xOf: (longitudeDeg: number) => number;
  readonly yOf: (latitudeDeg: number) => number;
  /** At the middle of the chart. */
  readonly pixelsPerNm: number;
}

const border = 24;
/** Half a degree around, so that a territory of one place has a chart too. */
const around = 0.4;
const steps = 12;

/** A chart of these places in a picture of this size; labels stand to the right more often than to the left. */
export const chartScale = (
  spots: readonly Spot[],
  { width, height }: { readonly width: number; readonly height: number },
): ChartScale => {
  const frame = {
    x: border,
    y: border,
    width: Math.max(40, width - 2 * border),
    height: Math.max(40, height - 2 * border),
  };
  const middle = middleLongitude(spots);
  const projection = geoMercator().rotate([-middle, 0]);
  const room = { side: Math.min(96, frame.width * 0.16), end: Math.min(34, frame.height * 0.08) };
  projection.fitExtent(
    [
      [frame.x + room.side, frame.y + room.end],
      [frame.x + frame.width - room.side, frame.y + frame.height - room.end],
    ],
    { type: 'MultiPoint', coordinates: spots.flatMap(cornersAround) },
  );
  const at = ({ latitudeDeg, longitudeDeg }: Spot): Point => {
    const [x, y] = projection([longitudeDeg, latitudeDeg])!;
    return { x, y };
  };
  const degrees = (x: number, y: number) => projection.invert!([x, y])!;
  const unrolled = (longitude: number) => middle + turn(longitude - middle);
  const [west, north] = degrees(frame.x, frame.y);
  const [east, south] = degrees(frame.x + frame.width, frame.y + frame.height);
  const centre = degrees(frame.x + frame.width / 2, frame.y + frame.height / 2);
  const tenth = 0.1;
  return {
    frame,
    at,
    along: (from, to) => {
      const line = geoInterpolate([from.longitudeDeg, from.latitudeDeg], [to.longitudeDeg, to.latitudeDeg]);
      return Array.from({ length: steps + 1 }, (_, step) => {
        const [longitudeDeg, latitudeDeg] = line(step / steps);
        return at({ latitudeDeg, longitudeDeg });
      });
    },
    edges: { west: unrolled(west), east: unrolled(east), south, north },
    xOf: (longitudeDeg) => at({ latitudeDeg: centre[1], longitudeDeg }).x,
    yOf: (latitudeDeg) => at({ latitudeDeg, longitudeDeg: middle }).y,
    // A minute of latitude is a nautical mile.
    pixelsPerNm:
      (at({ latitudeDeg: centre[1] - tenth, longitudeDeg: middle }).y -
        at({ latitudeDeg: centre[1] + tenth, longitudeDeg: middle }).y) /
      (2 * tenth * 60),
  };
};

const cornersAround = ({ latitudeDeg, longitudeDeg }: Spot): [number, number][] => [
  [longitudeDeg, latitudeDeg - around / 4],
  [longitudeDeg, latitudeDeg + around / 4],
];

/** −180 up to 180. */
const turn = (degrees: number): number => ((((degrees + 180) % 360) + 360) % 360) - 180;

/** The middle of the smallest arc that holds them all, whichever side of 180 they lie. */
const middleLongitude = (spots: readonly Spot[]): number => {
  const first = spots[0]?.longitudeDeg ?? 0;
  const offsets = spots.map(({ longitudeDeg }) => turn(longitudeDeg - first));
  return turn(first + (Math.min(0, ...offsets) + Math.max(0, ...offsets)) / 2);
};
