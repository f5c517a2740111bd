import type { Calendar } from '../../api/index.js';
import { decideRows } from './decide-rows.js';
import type { Morning } from './morning-read.js';
import { awayRows, notHeardRows, type WordsRow } from './not-heard-rows.js';

export interface HandoverLine {
  readonly kind: 'open decision' | 'flight away' | 'not heard from' | 'dispute' | 'from paper' | 'said';
  readonly words: string;
}

/** What goes over to the next person, as it reads now; `said`: what the outgoing person adds. */
export const handoverLines = (
  morning: Morning,
  calendar: Calendar,
  said: readonly string[],
): readonly HandoverLine[] => {
  const disputes = new Set(morning.cases.map(({ count }) => count));
  const of = (kind: HandoverLine['kind'], rows: readonly WordsRow[]): readonly HandoverLine[] =>
    rows.map(({ time, head, words }) => line(kind, `${head}, ${time}. ${words}`));
  return [
    ...said.map((words) => line('said', words)),
    ...of(
      'flight away',
      awayRows({ ...morning, away: morning.away.filter(({ word }) => word !== 'down and well') }, calendar),
    ),
    ...decideRows(morning, calendar).map(({ key, time, head, state, needsDecision, words }) =>
      line(
        disputes.has(key) ? 'dispute' : 'open decision',
        `${head}, ${time}. ${needsDecision ? 'Needs a decision. ' : `${state}. `}${words}`,
      ),
    ),
    ...of('not heard from', notHeardRows(morning, calendar)),
    ...morning.changed
      .filter(({ source }) => source.includes('from paper'))
      .map(({ at, writtenAt, what, source }) =>
        line(
          'from paper',
          `${what}, ${source}, entered ${calendar.when(at)}${writtenAt === null ? '' : `, written ${calendar.when(writtenAt)}`}.`,
        ),
      ),
  ];
};

const longest = 500;

const line = (kind: HandoverLine['kind'], words: string): HandoverLine => ({
  kind,
  words: words.length > longest ? `${words.slice(0, longest - 3)}...` : words,
});
