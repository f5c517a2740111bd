/** A ruler from below the floor to above the plan: where things stand, as shares of its length from 0 to 1. */
export interface GapScale {
  readonly floor: number;
  readonly plan: number;
  readonly ticks: readonly { readonly at: number; readonly long: boolean }[];
}

/** Both in units of money, `floor` at most `plan`. */
export const gapScale = (floor: number, plan: number): GapScale => {
  const span = Math.max(plan - floor, 1);
  const from = floor - span * 0.6;
  const length = span * 2.2;
  const at = (amount: number): number => (amount - from) / length;
  const step = niceStep(length / 18);
  const first = Math.ceil(from / step);
  const count = Math.floor((from + length) / step) - first + 1;
  return {
    floor: at(floor),
    plan: at(plan),
    ticks: Array.from({ length: count }, (_, index) => ({
      // A tick at the very end is not past it for want of a last digit.
      at: Math.min(1, Math.max(0, at((first + index) * step))),
      long: (first + index) % 5 === 0,
    })),
  };
};

/** 1, 2 or 5 times a power of ten, no smaller than asked for. */
const niceStep = (least: number): number => {
  const power = 10 ** Math.floor(Math.log10(least));
  return [1, 2, 5, 10].map((times) => times * power).find((step) => step >= least)!;
};
