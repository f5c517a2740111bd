import { outsideWords } from '@drumline/loading';
import type { Bar } from '../bar-read.js';
import { edgesOf } from '../legs/bar-scale.js';
import type { Fallback, LoadedFlight, Moment } from '../load-read.js';

/** A mark of the balance graph: square without fuel, circle at take-off. */
export interface Mark {
  readonly kind: 'zero fuel' | 'take-off';
  readonly armIn: number;
  readonly weightLb: number;
}

/** Zero fuel and take-off of one leg; the weights are the sums of its bar. */
export const marksOf = (moments: readonly Moment[], leg: string, bar: Bar): readonly Mark[] => {
  const edges = edgesOf(bar);
  return marks(moments, leg, (kind) => edges[kind]);
};

/** The same with the drums that go when the strip is soft. */
export const fallbackMarks = ({ moments, drumsLb }: Fallback, leg: string, bar: Bar): readonly Mark[] => {
  const drums = bar.load.filter(({ isDrum }) => isDrum).reduce((sum, { lb }) => sum + lb, 0);
  const edges = edgesOf(bar);
  return marks(moments, leg, (kind) => edges[kind] - drums + drumsLb);
};

const marks = (
  moments: readonly Moment[],
  leg: string,
  weightOf: (kind: Mark['kind']) => number,
): readonly Mark[] =>
  (['zero fuel', 'take-off'] as const).flatMap((kind) => {
    const found = moments.find((each) => each.leg === leg && each.moment === kind);
    return found === undefined ? [] : [{ kind, armIn: found.armIn, weightLb: weightOf(kind) }];
  });

export interface Frame {
  readonly arms: readonly number[];
  readonly weights: readonly number[];
  /** Per cent across and down of the drawing. */
  readonly x: (armIn: number) => number;
  readonly y: (weightLb: number) => number;
}

/** Room for the envelope and every mark, with round figures at the edges. */
export const frameOf = ({ envelope }: LoadedFlight['type'], shown: readonly Mark[]): Frame => {
  const arms = [
    ...envelope.flatMap(({ forwardIn, aftIn }) => [forwardIn, aftIn]),
    ...shown.map(({ armIn }) => armIn),
  ];
  const weights = [...envelope.map(({ weightLb }) => weightLb), ...shown.map(({ weightLb }) => weightLb)];
  const armStep = Math.max(...arms) - Math.min(...arms) > 12 ? 4 : 2;
  const heavy = Math.max(...weights) - Math.min(...weights) > 5000 ? 1000 : 500;
  const [left, right] = [floorTo(Math.min(...arms) - 1, armStep), ceilTo(Math.max(...arms) + 1, armStep)];
  const [low, high] = [floorTo(Math.min(...weights), heavy), ceilTo(Math.max(...weights) + 1, heavy)];
  return {
    arms: steps(left, right, armStep),
    weights: steps(low, high, heavy),
    x: (armIn) => 15 + ((armIn - left) / (right - left)) * 81,
    y: (weightLb) => 87 - ((weightLb - low) / (high - low)) * 80,
  };
};

const floorTo = (value: number, step: number): number => Math.floor(value / step) * step;
const ceilTo = (value: number, step: number): number => Math.ceil(value / step) * step;
const steps = (from: number, to: number, step: number): readonly number[] =>
  Array.from({ length: Math.round((to - from) / step) + 1 }, (_, at) => from + at * step);

/** "Zero fuel 191.8 in, take-off 192.4 in: inside 178.0 to 193.8 in", or what lies outside. */
export const balanceWords = (moments: readonly Moment[], leg: string): string => {
  const own = moments.filter((each) => each.leg === leg && each.moment !== 'ramp');
  if (own.length === 0) return 'The balance cannot be judged: something aboard has no place.';
  const words = own.map(({ moment, armIn }) => `${moment} ${armIn.toFixed(1)} in`).join(', ');
  const outside = own.filter(({ inside }) => !inside);
  if (outside.length === 0) return `${words}: inside the envelope.`;
  return `${words}. Outside: ${outside.map(wordsOf).join('; ')}.`;
};

const wordsOf = ({ forwardIn, aftIn, ...one }: Moment): string =>
  forwardIn === null || aftIn === null
    ? `${one.moment} weighs more than the envelope holds`
    : outsideWords({ ...one, forwardIn, aftIn });
