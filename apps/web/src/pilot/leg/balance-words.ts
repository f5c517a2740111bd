import { print } from '@drumline/units';
import type { Leg } from './leg-words.js';

export interface BalanceWords {
  readonly isInside: boolean;
  /** "Inside", "OUTSIDE", "Not known". */
  readonly main: string;
  /** "zero fuel 187.9 in, limits 183.0 to 192.1 in", one for each moment of the leg. */
  readonly moments: readonly string[];
}

/** Where the centre of gravity lies on a leg, by the sheet: with no fuel, at take-off, at landing. */
export const balanceOf = ({ rows }: Pick<Leg, 'rows'>): BalanceWords => {
  const sums = rows.flatMap(({ kind, label, cg }) => (kind === 'sum' && cg !== null ? [{ label, cg }] : []));
  const isInside = sums.every(({ cg }) => cg.inside);
  return {
    isInside: isInside && sums.length > 0,
    main: sums.length === 0 ? 'Not known' : isInside ? 'Inside' : 'OUTSIDE',
    moments: sums.map(({ label, cg: { armIn, forwardIn, aftIn, inside } }) => {
      const limits =
        forwardIn === null || aftIn === null
          ? 'no limits for that weight'
          : `limits ${forwardIn.toFixed(1)} to ${print(aftIn, 'in', 1)}`;
      return `${label} ${print(armIn, 'in', 1)}, ${limits}${inside ? '' : ': OUTSIDE'}`;
    }),
  };
};
