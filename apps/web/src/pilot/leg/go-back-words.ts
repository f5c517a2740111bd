import { decimalsOf, print } from '@drumline/units';
import type { Leg } from './leg-words.js';

/** When not to land at the end of a leg, and where to go then. */
export interface GoBackWords {
  /** What the main words stand under. */
  readonly of: string;
  readonly main: string;
  readonly rest: readonly string[];
}

/** On the way home nobody goes back to the strip that was left: where else to land is what counts. */
export const goBackWords = (leg: Leg): GoBackWords =>
  leg.goBack.leaveAgain === null ? homeward(leg) : outward(leg);

const outward = ({ to, goBack: { tailwindLimitKt, committalPoint, ifSoft } }: Leg): GoBackWords => {
  const closed =
    ifSoft === null || ifSoft.leave.length === 0
      ? 'Closed'
      : `Closed, or soft with more than ${ifSoft.take ?? 0} drums`;
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
