/** A graph of levels in pixels: days from left to right, litres from zero up. */
export interface LevelScale {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly topLitres: number;
  /** `day` 0 is the start of the first day. */
  readonly x: (day: number) => number;
  readonly y: (litres: number) => number;
}

interface GraphSize {
  readonly width: number;
  readonly height: number;
  /** Kept free at the right, for words. */
  readonly words?: number;
}

/** Three sizes serve nearly every cache, so that graphs can be compared; above them, the next 5,000 L. */
export const topFor = (highestLitres: number): number =>
  [2000, 3000, 5000].find((top) => highestLitres <= top) ?? Math.ceil(highestLitres / 5000) * 5000;

export const levelScale = (
  { width, height, words = 22 }: GraphSize,
  days: number,
  topLitres: number,
): LevelScale => {
  const [left, right, top, bottom] = [36, width - words, 19, height - 27];
  return {
    width,
    height,
    left,
    right,
    top,
    bottom,
    topLitres,
    x: (day) => round(left + (day / days) * (right - left)),
    y: (litres) => round(bottom - (Math.max(litres, 0) / topLitres) * (bottom - top)),
  };
};

const round = (value: number): number => Math.round(value * 10) / 10;

/** Levels as one stepped path: what is there now, then each day's figure at the day's end. */
export const stepped = (levels: readonly number[], { x, y }: LevelScale): string =>
  levels
    .slice(1)
    .reduce((path, litres, day) => `${path}H${x(day + 1)}V${y(litres)}`, `M${x(0)} ${y(levels[0]!)}`);

/** A line from left to right at a level. */
export const across = (litres: number, { left, right, y }: LevelScale): string =>
  `M${left} ${y(litres)}H${right}`;

/** Lines across, and what stands at their ends: five at most. */
export const litreLines = (topLitres: number): readonly number[] => {
  const step = topLitres <= 5000 ? 1000 : topLitres / 5;
  return Array.from({ length: Math.floor(topLitres / step) + 1 }, (_, index) => index * step);
};
