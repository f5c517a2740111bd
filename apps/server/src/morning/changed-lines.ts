import type { SurfaceReport } from '@drumline/network';
import { type ChangedRow, changedWords } from './changed-words.js';
import type { Changed } from './morning-answer.js';

/** News in words, in their order; flights that need a decision for one reason, marked by one person at one time, are one line. */
export const changedLines = (
  rows: readonly ChangedRow[],
  latest: ReadonlyMap<string, SurfaceReport>,
): readonly Changed[] => {
  const lines = new Map<string, ChangedRow[]>();
  rows.forEach((row, place) => {
    const key = isMark(row) ? [row.at, row.person, whyMarked(row)].join(' | ') : `${place}`;
    lines.set(key, [...(lines.get(key) ?? []), row]);
  });
  return [...lines.values()].map((same) => {
    const [first] = same;
    const line = changedWords(first!, latest);
    return isMark(first!) ? { ...line, what: markedWords(same) } : line;
  });
};

const isMark = ({ kind, facts }: ChangedRow): boolean => kind === 'flight' && facts.act === 'mark';

/** "F001, F002 need a decision: Batch J27-041 is held: water found." */
const markedWords = (rows: readonly ChangedRow[]): string => {
  const flights = rows.map(({ facts }) => String(facts.flight)).sort();
  const need = flights.length === 1 ? 'needs' : 'need';
  return `${flights.join(', ')} ${need} a decision: ${whyMarked(rows[0]!)}`;
};

/** The first sentence: the rest, as what to do, stands with the decision. A reason may begin with the flight, its day and leg. */
const whyMarked = ({ facts: { flight, reason } }: ChangedRow): string => {
  const words = String(reason ?? '').replace(new RegExp(`^${String(flight)}, [^:]*: `), '');
  return /^.*?\.(?= |$)/.exec(words)?.[0] ?? words;
};
