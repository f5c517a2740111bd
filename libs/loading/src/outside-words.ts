import { printNumber } from '@drumline/units';

/** Where the centre of gravity lies at one moment, and how far it may; arms in inches aft of the datum. */
interface OutsideMoment {
  readonly moment: string;
  readonly armIn: number;
  readonly forwardIn: number;
  readonly aftIn: number;
}

/**
 * "zero fuel 211.9 in against aft 211.0 in": the bound that is passed. Both in tenths, and both in finer parts where
 * tenths would not show which is more.
 */
export function outsideWords({ moment, armIn, forwardIn, aftIn }: OutsideMoment): string {
  const [side, boundIn] = armIn > aftIn ? (['aft', aftIn] as const) : (['forward', forwardIn] as const);
  const decimals = [1, 2, 3].find((each) => printNumber(armIn, each) !== printNumber(boundIn, each)) ?? 4;
  const print = (arm: number): string => `${printNumber(arm, decimals)} in`;
  return `${moment} ${print(armIn)} against ${side} ${print(boundIn)}`;
}
