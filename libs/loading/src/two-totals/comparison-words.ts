import { type Pounds, print } from '@drumline/units';
import type { TotalsComparison } from './compare-totals.js';

/** Two totals that lie apart, with the arithmetic, the likely slips and what to do; which is right is not said. */
export const comparisonWords = (
  what: string,
  { words, slips, advice }: TotalsComparison,
  toleranceLb: Pounds,
): string =>
  [
    `${what}: ${words}; ${print(toleranceLb, 'lb')} is accepted.`,
    ...slips.map((slip) => `${slip.title}: ${slip.words}`),
    advice,
  ].join(' ');
