import type { DecideRow } from './decide-row.js';
import type { Morning } from './morning-read.js';

type When = 'now' | 'to see';

/** What is raised and may hurt people, now; or the rest of it, which has only to be seen. Last how many more there are. */
export const raisedRows = (morning: Morning, time: When): readonly DecideRow[] => {
  const { raised, moreRaised } = morning;
  const isNow = time === 'now';
  return [
    ...raised.filter(({ mayHurt }) => mayHurt === isNow).map((thing) => raisedRow(thing, time, morning)),
    ...moreRaisedRow(time, isNow ? moreRaised.mayHurt : moreRaised.rest),
  ];
};

const raisedRow = (
  { id, place, what, whatNext }: Morning['raised'][number],
  time: When,
  { fuel }: Morning,
): DecideRow => {
  const isAtCache = fuel.some((cache) => cache.place === place);
  return {
    key: id,
    time,
    head: what,
    state: '',
    needsDecision: false,
    words: whatNext,
    act: { kind: 'seen', raised: id, ...(isAtCache ? { path: `/caches/${place}` } : {}) },
    canReplan: false,
  };
};

/** What is raised beyond the lines that are sent. */
const moreRaisedRow = (time: When, more: number): readonly DecideRow[] =>
  more === 0
    ? []
    : [
        {
          key: `more raised, ${time}`,
          time,
          head: `${more} more raised`,
          state: '',
          needsDecision: false,
          words: `${time === 'now' ? 'They can hurt people. ' : ''}Listed on Drums, Raised.`,
          act: { kind: 'open', label: `${more} more: Drums, Raised`, path: '/drums?view=raised' },
          canReplan: false,
        },
      ];
