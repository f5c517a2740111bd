import { printedLbOf } from '../printed-weights.js';
import type { SheetItem } from './sheet-item.js';
import { apartOf, type Fit, lbWords, nearest, type Slip, type SlipFinder } from './slip.js';

/** Two weights of the column, each with what befell it. */
type Pair = readonly [SheetItem, SheetItem];

/**
 * Two weights at once: both left out or twice, both in kg, or one left out and one in kg. The plainest of the three that
 * fits is named, with the pairs that fit best; many pairs fit many differences, so single slips are looked for first.
 */
export const twoWeights: SlipFinder = (question) => {
  const { items } = question;
  const isShort = question.typed < question.sheet;
  const pairs = items.flatMap((one, at) => items.slice(at + 1).map((other): Pair => [one, other]));
  const both = (each: (item: SheetItem) => number) =>
    pairs.map((pair): Fit<Pair> => ({ of: pair, lb: each(pair[0]) + each(pair[1]) }));
  const apart = apartOf(question);
  const whole = nearest(apart, both(lbOf), 1);
  if (whole.length > 0) return [told(question, whole, isShort ? 'both left out of' : 'both twice in')];
  // A weight in kg makes a sum smaller.
  if (!isShort) return [];
  const inKg = nearest(apart, both(unitLb), 1);
  if (inKg.length > 0) return [told(question, inKg, 'both added as kg in')];
  const turned = pairs.flatMap(([one, other]): Pair[] => [
    [one, other],
    [other, one],
  ]);
  const mixed = turned.map((pair): Fit<Pair> => ({ of: pair, lb: lbOf(pair[0]) + unitLb(pair[1]) }));
  const leftAndKg = nearest(apart, mixed, 1);
  return leftAndKg.length > 0
    ? [told(question, leftAndKg, 'the first left out, the second added as kg, in')]
    : [];
};

const lbOf = ({ kg }: SheetItem): number => printedLbOf(kg);

const unitLb = ({ kg }: SheetItem): number => printedLbOf(kg) - kg;

const told = (question: Parameters<SlipFinder>[0], pairs: readonly Pair[], what: string): Slip => {
  const [[one, other]] = pairs as readonly [Pair];
  const more = pairs.length > 1 ? `, or another two of the same weights` : '';
  return {
    kind: 'two weights',
    title: 'Two weights at once',
    words: `${lbWords(apartOf(question))} apart, as ${one.name} and ${other.name}${more}: ${what} one figure.`,
  };
};
