/** A rule that a plan breaks: where, what is wrong, and what would mend it. */
export interface Fault {
  readonly where: string;
  readonly what: string;
  readonly mend: string;
}

/** Hours and stock units are compared with this much grace, for sums of decimals. */
export const GRACE = 1e-6;

/** A figure for a sentence: three decimals at most. */
export const figure = (value: number): string => String(Math.round(value * 1000) / 1000);
