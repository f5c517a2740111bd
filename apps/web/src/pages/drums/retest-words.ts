import type { RetestComingAnswer } from '@drumline/contract';
import { inWords } from '../../ui/index.js';

/** One sentence a batch: "J26-118, due Tue 22 June 2027: 12 drums not burned by then, BIR 6, DUN 2." */
export const retestWords = (
  drums: readonly RetestComingAnswer[],
  date: (day: string) => string,
): readonly string[] => {
  const unused = drums.filter(({ unusedLitres }) => unusedLitres > 0);
  const batches = [...new Set(unused.map(({ batch }) => batch))];
  return batches.map((batch) => {
    const of = unused.filter((drum) => drum.batch === batch);
    const places = [...new Set(of.map(({ place }) => place))].sort();
    const there = places.map((place) => `${place} ${of.filter((drum) => drum.place === place).length}`);
    const { retestDue, isPast } = of[0]!;
    return `${batch}, ${isPast ? 'was due' : 'due'} ${date(retestDue)}: ${inWords(of.length, 'drums')} not burned by then, ${there.join(', ')}.`;
  });
};
