import type { Box } from './chart-scale.js';

export interface Label {
  readonly key: string;
  /** Where it may stand, best first. */
  readonly spots: readonly Box[];
}

export interface Obstacle extends Box {
  /** How bad it is to stand on it: a mark 8, another label 2.2, a line 2.5 for as far as it goes. */
  readonly weight: number;
}

interface Chart {
  readonly frame: Box;
  readonly obstacles: readonly Obstacle[];
}

const rounds = 4;
/** In square pixels: what a less good side may cost before a little overlap is better. */
const worseSide = 8;
const outside = 20;
/** Two labels over each other cannot be read, a label over a line can. */
const onLabel = 2.2;
/** Between two labels, so that they are not read as one. */
const gap = 4;

/**
 * The spot of each label, as an index of its `spots`: one label after the other takes the spot with least overlap, and each
 * may think again when the others stand. The same labels always come out the same.
 */
export const labelSpots = (
  labels: readonly Label[],
  { frame, obstacles }: Chart,
): ReadonlyMap<string, number> => {
  const chosen = new Map<string, number>();
  const fixed = labels.map(({ spots }) =>
    spots.map(
      (spot, index) => index * worseSide + outside * areaOutside(spot, frame) + onObstacles(spot, obstacles),
    ),
  );
  for (let round = 0; round < rounds; round++)
    for (const [at, label] of labels.entries()) {
      const others = labels.flatMap(({ key, spots }) =>
        key === label.key || !chosen.has(key) ? [] : [spots[chosen.get(key)!]!],
      );
      const costs = label.spots.map(
        (spot, index) =>
          fixed[at]![index]! +
          others.reduce((sum, other) => sum + onLabel * overlap(withGap(spot), other), 0),
      );
      chosen.set(label.key, costs.indexOf(Math.min(...costs)));
    }
  return chosen;
};

const withGap = ({ x, y, width, height }: Box): Box => ({
  x: x - gap,
  y: y - gap,
  width: width + 2 * gap,
  height: height + 2 * gap,
});

const onObstacles = (spot: Box, obstacles: readonly Obstacle[]): number =>
  obstacles.reduce((sum, obstacle) => sum + obstacle.weight * overlap(spot, obstacle), 0);

/** In square pixels. */
export const overlap = (one: Box, other: Box): number => {
  const width = Math.min(one.x + one.width, other.x + other.width) - Math.max(one.x, other.x);
  const height = Math.min(one.y + one.height, other.y + other.height) - Math.max(one.y, other.y);
  return width > 0 && height > 0 ? width * height : 0;
};

const areaOutside = (spot: Box, frame: Box): number => spot.width * spot.height - overlap(spot, frame);
