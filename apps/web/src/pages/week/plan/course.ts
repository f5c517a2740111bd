import type { PlanProgress } from './plan-read.js';

/** Where a search stood at a second: money in cents, shortages at their prices included. */
export interface CoursePoint {
  readonly seconds: number;
  readonly best: number | null;
  readonly bound: number | null;
}

/** The course so far with what is known now; a moment that is there already is not put twice. */
export const withPoint = (
  course: readonly CoursePoint[],
  progress: PlanProgress | null,
): readonly CoursePoint[] => {
  if (progress === null) return course;
  const { seconds, best, bound } = progress;
  const last = course.at(-1);
  if (last !== undefined && seconds <= last.seconds) {
    // Taken up again by another worker: the search began anew.
    return seconds < last.seconds ? [{ seconds, best, bound }] : course;
  }
  return [...course, { seconds, best, bound }];
};

export interface CourseScale {
  /** Of a second, from 0 to 1. */
  readonly across: (seconds: number) => number;
  /** Of an amount of money in cents, from 0 at the top to 1; what lies outside is held at the edge. */
  readonly down: (money: number) => number;
  readonly top: number;
  readonly bottom: number;
}

/**
 * Scale of the graph: from nothing to the seconds asked for, and the money that the last half of the points is about. A
 * first plan that is far off would press the rest into a line.
 */
export const courseScale = (course: readonly CoursePoint[], seconds: number): CourseScale | null => {
  const later = course.slice(Math.floor(course.length / 2));
  const amounts = later.flatMap(({ best, bound }) =>
    [best, bound].filter((money): money is number => money !== null && money > 0),
  );
  if (amounts.length === 0) return null;
  const [low, high] = [Math.min(...amounts), Math.max(...amounts)];
  const room = Math.max(high - low, high / 1000, 1) * 0.15;
  const [bottom, top] = [low - room, high + room];
  const span = Math.max(seconds, course.at(-1)!.seconds);
  const inside = (share: number) => Math.min(1, Math.max(0, share));
  return {
    across: (at) => inside(at / span),
    down: (money) => inside((top - money) / (top - bottom)),
    top,
    bottom,
  };
};

/** Amounts in cents to write beside the graph: round ones of the currency, two to five of them, the highest first. */
export const moneyTicks = ({ top, bottom }: Pick<CourseScale, 'top' | 'bottom'>): readonly number[] => {
  const wanted = (top - bottom) / 4;
  const ten = 10 ** Math.floor(Math.log10(wanted));
  const step = Math.max(100, [1, 2, 5, 10].map((times) => times * ten).find((each) => each >= wanted)!);
  const first = Math.floor(top / step) * step;
  const count = Math.floor((first - bottom) / step) + 1;
  return Array.from({ length: count }, (_, at) => first - at * step);
};

/** Each amount holds until the next is known: corners of a stepped line, as shares of the graph. */
export const steps = (
  course: readonly CoursePoint[],
  scale: CourseScale,
  amountOf: (point: CoursePoint) => number | null,
): readonly (readonly [across: number, down: number])[] => {
  const known = course.flatMap((point) => {
    const amount = amountOf(point);
    return amount === null || amount <= 0 ? [] : [[scale.across(point.seconds), scale.down(amount)] as const];
  });
  return known.flatMap(([across, down], at) =>
    at === 0 ? [[across, down] as const] : [[across, known[at - 1]![1]] as const, [across, down] as const],
  );
};
