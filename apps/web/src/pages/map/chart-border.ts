import type { Box, ChartScale } from './chart-scale.js';

export interface GridLine {
  readonly at: number;
  readonly label: string;
}

export interface ChartBorder {
  /** Every other 10 minutes of latitude and 30 of longitude, filled in. */
  readonly marks: readonly Box[];
  readonly parallels: readonly GridLine[];
  readonly meridians: readonly GridLine[];
}

const thick = 4;
const out = 3;

/** The border of a chart: on its sides 10 minutes of latitude are 10 NM. */
export const chartBorder = (scale: ChartScale): ChartBorder => {
  const { frame, edges, xOf, yOf } = scale;
  const upright = everyOther(edges.south, edges.north, 1 / 6).flatMap(([from, to]) => {
    const [top, bottom] = [yOf(to), yOf(from)];
    return [frame.x - out - thick, frame.x + frame.width + out].map((x) => ({
      x,
      y: top,
      width: thick,
      height: bottom - top,
    }));
  });
  const level = everyOther(edges.west, edges.east, 1 / 2).flatMap(([from, to]) => {
    const [left, right] = [xOf(from), xOf(to)];
    return [frame.y - out - thick, frame.y + frame.height + out].map((y) => ({
      x: left,
      y,
      width: right - left,
      height: thick,
    }));
  });
  return {
    marks: [...upright, ...level],
    parallels: gridOf(edges.south, edges.north).map((degrees) => ({
      at: yOf(degrees),
      label: degreesInWords(degrees, 'N', 'S'),
    })),
    meridians: gridOf(edges.west, edges.east).map((degrees) => ({
      at: xOf(degrees),
      label: degreesInWords(within(degrees), 'E', 'W'),
    })),
  };
};

/** Pieces with an even number, cut at the edges. */
const everyOther = (from: number, to: number, piece: number): readonly (readonly [number, number])[] => {
  const first = Math.floor(from / piece);
  const last = Math.ceil(to / piece);
  return Array.from({ length: last - first }, (_, index) => first + index)
    .filter((number) => number % 2 === 0)
    .map((number) => [Math.max(from, number * piece), Math.min(to, (number + 1) * piece)] as const)
    .filter(([start, end]) => end > start);
};

const gridSteps = [0.5, 1, 2, 5, 10, 20] as const;

/** Whole degrees where there is room for them: six lines at most. */
const gridOf = (from: number, to: number): readonly number[] => {
  const step = gridSteps.find((each) => (to - from) / each <= 6) ?? 30;
  const first = Math.ceil(from / step);
  const count = Math.floor(to / step) - first + 1;
  return Array.from({ length: Math.max(0, count) }, (_, index) => (first + index) * step);
};

const within = (degrees: number): number =>
  degrees > 180 ? degrees - 360 : degrees < -180 ? degrees + 360 : degrees;

/** "66° 30' N", "2° W", "0°". */
const degreesInWords = (degrees: number, plus: string, minus: string): string => {
  const size = Math.abs(degrees);
  const minutes = Math.round((size % 1) * 60);
  const side = degrees === 0 || size === 180 ? '' : ` ${degrees > 0 ? plus : minus}`;
  return `${Math.floor(size)}°${minutes === 0 ? '' : ` ${minutes}'`}${side}`;
};

const barLengths = [1, 2, 5, 10, 20, 50, 100, 200, 500] as const;

/** The longest round length that fits. */
export const scaleBarNm = (pixelsPerNm: number, mostPixels: number): number =>
  barLengths.findLast((length) => length * pixelsPerNm <= mostPixels) ?? 1;
