/** As whole numbers that add up as printed: each is at most one off, and their sum is the rounded sum. */
const wholeParts = (parts: readonly number[]): readonly number[] => {
  let exact = 0;
  let printed = 0;
  return parts.map((each) => {
    exact += each;
    const upTo = Math.round(exact);
    const share = upTo - printed;
    printed = upTo;
    return share;
  });
};

/** Cents as whole units of money. */
export const wholeMoney = (cents: readonly number[]): readonly number[] =>
  wholeParts(cents.map((each) => each / 100));

/** Hours as hundredths of an hour. */
export const printedHours = (hours: readonly number[]): readonly number[] =>
  wholeParts(hours.map((each) => each * 100)).map((hundredths) => hundredths / 100);

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
