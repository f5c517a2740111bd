import type { Calendar } from '../../api/index.js';
import { decideRows } from './decide-rows.js';
import type { Morning } from './morning-read.js';
import { awayRows, notHeardRows, type WordsRow } from './not-heard-rows.js';
import type { PaperEntries } from './paper/paper-read.js';
import { silenceWords } from './paper/silence-words.js';

export interface HandoverLine {
  readonly kind: 'open decision' | 'flight away' | 'not heard from' | 'dispute' | 'entered late' | 'said';
  readonly words: string;
}

interface HandedOver {
  readonly morning: Morning;
  readonly entries: PaperEntries;
  /** What the outgoing person adds. */
  readonly said: readonly string[];
}

/** What goes over to the next person, as it reads now. */
export const handoverLines = (
  { morning, entries, said }: HandedOver,
  calendar: Calendar,
): readonly HandoverLine[] => {
  const disputes = new Set(morning.cases.map(({ count }) => count));
  const of = (kind: HandoverLine['kind'], rows: readonly WordsRow[]): readonly HandoverLine[] =>
    rows.map(({ time, head, words }) => line(kind, `${headWords(head, time)} ${words}`));
  return [
    ...said.map((words) => line('said', words)),
    ...paperLines(entries, calendar),
    ...of(
      'flight away',
      awayRows({ ...morning, away: morning.away.filter(({ word }) => word !== 'down and well') }, calendar),
    ),
    ...decideRows(morning, calendar).map(({ key, time, head, state, needsDecision, words }) =>
      line(
        disputes.has(key) ? 'dispute' : 'open decision',
        [headWords(head, time), needsDecision ? 'Needs a decision.' : state === '' ? '' : `${state}.`, words]
          .filter((part) => part !== '')
          .join(' '),
      ),
    ),
    ...of('not heard from', notHeardRows(morning, calendar)),
  ];
};

/** "F05, B1 XALD-XLOR, 07:30."; a head that is a sentence of its own is not ended twice. */
const headWords = (head: string, time: string): string => `${head.replace(/\.$/, '')}, ${time}.`;

/** The outage, then what was entered for each flight and each cache, as many of them on one line as it holds. */
const paperLines = (entries: PaperEntries, calendar: Calendar): readonly HandoverLine[] => {
  const silence = silenceWords(entries, calendar);
  const late = entries.items.filter(isLate);
  const subjects = [...new Set(late.map(({ flight }) => flight))];
  return [
    ...(silence === null ? [] : [line('entered late', silence)]),
    ...subjects
      .flatMap((flight) =>
        packed(
          flight ?? 'Caches and strips',
          late.filter((entry) => entry.flight === flight).map((entry) => enteredWords(entry, calendar)),
        ),
      )
      .map((words) => line('entered late', words)),
  ];
};

type PaperEntry = PaperEntries['items'][number];

/** What came by radio and was entered at once is no news of an outage. */
const isLate = ({ means, writtenAt, enteredAt }: PaperEntry): boolean =>
  means === 'paper' || Date.parse(enteredAt) - Date.parse(writtenAt) > 30 * 60_000;

interface Entered {
  readonly words: string;
  /** How it came, from whom, and who entered it when: said once for entries that share it. */
  readonly source: string;
}

const enteredWords = (
  { what, writtenAt, enteredAt, by, enteredBy, means }: PaperEntry,
  { when }: Calendar,
): Entered => ({
  words: `${what} ${when(writtenAt)}`,
  source: `${means}, ${by}; entered ${when(enteredAt)} by ${enteredBy ?? 'the program'}`,
});

/** Nothing is cut off: what does not fit stands on the next line. */
const packed = (subject: string, entries: readonly Entered[]): readonly string[] => {
  const lines: Entered[][] = [[]];
  for (const entry of entries) {
    const last = lines.at(-1)!;
    if (last.length > 0 && subjectWords(subject, [...last, entry]).length > longest) lines.push([entry]);
    else last.push(entry);
  }
  return lines.map((each) => subjectWords(subject, each));
};

/** "F07: off Tue 17:20; down at XESK Tue 18:05 (paper, FW1; entered 14:02 by K. Aske)". */
const subjectWords = (subject: string, entries: readonly Entered[]): string =>
  `${subject}: ${entries
    .map(({ words, source }, at) => (entries[at + 1]?.source === source ? words : `${words} (${source})`))
    .join('; ')}`;

const longest = 500;

const line = (kind: HandoverLine['kind'], words: string): HandoverLine => ({
  kind,
  words: words.length > longest ? `${words.slice(0, longest - 3)}...` : words,
});
