import { decimalsOf, print } from '@drumline/units';
import type { Leg } from './leg-words.js';

/** When not to land at the end of a leg, and where to go then. */
export interface GoBackWords {
  /** What the main words stand under. */
  readonly of: string;
  readonly main: string;
  readonly rest: readonly string[];
}

/**
 * On the way home nobody goes back to the strip that was left: where else to land is what counts. `onward`: drums that are
 * aboard at the landing for stops after it.
 */
export const goBackWords = (leg: Leg, onward: number): GoBackWords =>
  leg.goBack.leaveAgain === null ? homeward(leg) : outward(leg, onward);

const outward = (
  { to, goBack: { tailwindLimitKt, committalPoint, ifSoft } }: Leg,
  onward: number,
): GoBackWords => {
  const most = (ifSoft?.take ?? 0) + onward;
  const closed =
    ifSoft === null || ifSoft.leave.length === 0
      ? 'Closed'
      : `Closed, or soft with more than ${most} drum${most === 1 ? '' : 's'} aboard`;
  return {
    of: 'Go back if',
    main:
      tailwindLimitKt === null
        ? 'No tailwind limit given'
        : `Tailwind more than ${print(tailwindLimitKt, 'kt', decimalsOf(tailwindLimitKt))}`,
    rest: [
      ifSoft !== null && ifSoft.take === null ? 'Soft or closed' : closed,
      committalPoint === null ? `No committal point at ${to}` : `Decide by ${committalPoint}`,
    ],
  };
};

const homeward = ({ from, to, goBack: { tailwindLimitKt, alternates } }: Leg): GoBackWords => {
  const [first, second] = alternates.filter(({ whyNot }) => whyNot === null);
  const others = first
    ? second
      ? [`Also: ${second.words}`]
      : []
    : [`Hear from ${to} before you leave ${from}`];
  return {
    of: `If ${to} closes`,
    main: first?.words ?? 'No alternate within fuel and limits',
    rest: [
      ...others,
      ...(tailwindLimitKt === null
        ? []
        : [
            `No landing with tailwind more than ${print(tailwindLimitKt, 'kt', decimalsOf(tailwindLimitKt))}`,
          ]),
    ],
  };
};
