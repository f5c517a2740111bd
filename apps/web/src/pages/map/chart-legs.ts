import { inWords } from '../../ui/index.js';
import type { ChartScale, Point, Spot } from './chart-scale.js';
import { type Leg, type LegLine, pairOf } from './day-legs.js';

export interface DrawnLeg {
  readonly key: string;
  readonly line: LegLine;
  readonly points: readonly Point[];
  /** Beside the line, one under the other: what flies there, and how far it is. */
  readonly captions: readonly string[];
  readonly arrow: readonly Point[];
}

interface Network {
  readonly scale: ChartScale;
  readonly spotOf: ReadonlyMap<string, Spot>;
  readonly distanceNm: (from: string, to: string) => number;
}

/** Between the lines of two flights on the same leg. */
const lane = 6;

/** Legs as lines: those between the same two places side by side, with one caption for all of them. */
export const drawnLegs = (
  legs: readonly Leg[],
  { scale, spotOf, distanceNm }: Network,
): readonly DrawnLeg[] => {
  const known = legs.filter(({ from, to }) => spotOf.has(from) && spotOf.has(to) && from !== to);
  return samePairs(known).flatMap((same) =>
    same.map((leg, index) => {
      const along = scale.along(spotOf.get(leg.from)!, spotOf.get(leg.to)!);
      // A line the other way round has its other side to the left.
      const turned = leg.from === same[0]!.from ? 1 : -1;
      const points = beside(along, (index - (same.length - 1) / 2) * lane * turned);
      const labels = index === 0 ? same.map(({ label }) => label).filter((label) => label !== '') : [];
      return {
        key: leg.key,
        line: leg.line,
        points,
        captions: labels.length === 0 ? [] : [...labels, inWords(distanceNm(leg.from, leg.to), 'NM', 1)],
        arrow: arrowOn(points),
      };
    }),
  );
};

/** "F05" of "F05, 6 drums" and its distance. */
export const byNameAlone = (leg: DrawnLeg): DrawnLeg => ({
  ...leg,
  captions: leg.captions.slice(0, -1).map((caption) => caption.split(',')[0]!),
});

const samePairs = (legs: readonly Leg[]): readonly (readonly Leg[])[] => {
  const pairs = new Map<string, Leg[]>();
  for (const leg of legs) {
    const pair = pairOf(leg.from, leg.to);
    pairs.set(pair, [...(pairs.get(pair) ?? []), leg]);
  }
  return [...pairs.values()];
};

const beside = (points: readonly Point[], by: number): readonly Point[] => {
  const [from, to] = [points[0]!, points.at(-1)!];
  const length = Math.hypot(to.x - from.x, to.y - from.y) || 1;
  const shift = { x: (-(to.y - from.y) / length) * by, y: ((to.x - from.x) / length) * by };
  return points.map(({ x, y }) => ({ x: x + shift.x, y: y + shift.y }));
};

const arrowLength = 9;
const arrowOpening = 0.4;

/** Three points of an open arrow, three quarters along. */
const arrowOn = (points: readonly Point[]): readonly Point[] => {
  const tipAt = Math.round((points.length - 1) * 0.75);
  const [before, tip] = [points[tipAt - 1]!, points[tipAt]!];
  const angle = Math.atan2(tip.y - before.y, tip.x - before.x);
  const barb = (by: number): Point => ({
    x: tip.x - arrowLength * Math.cos(angle + by),
    y: tip.y - arrowLength * Math.sin(angle + by),
  });
  return [barb(arrowOpening), tip, barb(-arrowOpening)];
};
