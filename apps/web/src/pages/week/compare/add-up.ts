/**
 * Cents as whole units of money that add up as printed: each is at most one off, and their sum is the rounded sum.
 */
export const wholeMoney = (cents: readonly number[]): readonly number[] => {
  let exact = 0;
  let printed = 0;
  return cents.map((each) => {
    exact += each;
    const upTo = Math.round(exact / 100);
    const share = upTo - printed;
    printed = upTo;
    return share;
  });
};

export interface PrintedCost {
  readonly flight: number;
  readonly fuel: number;
  readonly handling: number;
  readonly total: number;
}

type Cost = PrintedCost;

/** The three parts of a cost in cents, as whole money; the total is their sum. */
export const printedCost = ({ flight, fuel, handling }: Omit<Cost, 'total'>): PrintedCost => {
  const [a, b, c] = wholeMoney([flight, fuel, handling]);
  return { flight: a!, fuel: b!, handling: c!, total: a! + b! + c! };
};

/** By how much each part rises, as whole money. */
export const printedRise = (before: Omit<Cost, 'total'>, after: Omit<Cost, 'total'>): PrintedCost =>
  printedCost({
    flight: after.flight - before.flight,
    fuel: after.fuel - before.fuel,
    handling: after.handling - before.handling,
  });
