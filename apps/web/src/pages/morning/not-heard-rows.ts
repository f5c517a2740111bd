import type { Calendar } from '../../api/index.js';
import type { KeptSurfaceReport } from '../../radio/kept-surfaces.js';
import { inWords } from '../../ui/index.js';
import type { Away, Morning, Strip } from './morning-read.js';

/** A line of "Not heard from" or of who is away. */
export interface WordsRow {
  readonly key: string;
  readonly time: string;
  readonly head: string;
  readonly words: string;
  /** Loud: somebody may need help. */
  readonly grave?: boolean;
}

/** What was said of strips and is kept on this machine, by place. */
type Kept = ReadonlyMap<string, KeptSurfaceReport>;

/** Crews first: a word that is due outweighs an old count. */
export const notHeardRows = (
  morning: Morning,
  calendar: Calendar,
  kept: Kept = new Map(),
): readonly WordsRow[] => [
  ...morning.notHeard.crews.map((crew) => crewRow(crew, morning, calendar)),
  ...morning.notHeard.draws.map((draw) => drawRow(draw, calendar)),
  ...morning.strips.flatMap((strip) => stripRow(strip, calendar, kept.get(strip.place)) ?? []),
  ...morning.notHeard.phones.map(({ person, hoursSilent }) => ({
    key: `phone ${person}`,
    time: `${hoursSilent} h`,
    head: `Phone of ${person}`,
    words: 'It may hold reports that nobody here knows of.',
  })),
  ...oldCounts(morning, calendar),
];

/** Each old count by itself, the oldest first; places that were never counted in one line. */
const oldCounts = ({ notHeard: { caches }, asOf }: Morning, calendar: Calendar): readonly WordsRow[] => {
  const never = caches.filter(({ countedAt }) => countedAt === null).map(({ place }) => place);
  const counted = caches.flatMap(({ place, countedAt, why }) =>
    countedAt === null
      ? []
      : [
          {
            key: `count ${place}`,
            time: ageWords(countedAt, asOf),
            head: `${place}, last count ${calendar.date(countedAt).slice(0, -5)}`,
            words: `${why.join(' ')} Ask the next crew there for a count.`,
          },
        ],
  );
  if (never.length === 0) return counted;
  const words = `${never.join(', ')}. The book alone is used; ask the next crew there for a count.`;
  return [...counted, { key: 'never counted', time: 'never', head: 'Not counted yet', words }];
};

const dueWords = {
  'not loaded': 'it should be off; not reported loaded',
  'not off': 'loaded; take-off not reported',
  'not back': 'not back; landing not reported',
  'drums not reported': 'home; its drums are not all reported',
} as const;

const crewRow = (
  { pilot, flight, expectedAt, what }: Morning['notHeard']['crews'][number],
  { asOf }: Morning,
  calendar: Calendar,
): WordsRow => ({
  key: `crew ${flight}`,
  time: ageWords(expectedAt, asOf),
  head: `${pilot ?? 'Crew'}, ${flight}`,
  words: `${dueWords[what]}. A word was due ${calendar.when(expectedAt)}.`,
});

const drawRow = (
  { date, place, helicopter, programme, litres }: Morning['notHeard']['draws'][number],
  { day }: Calendar,
): WordsRow => ({
  key: `draw ${date} ${place} ${helicopter} ${programme}`,
  time: day(date),
  head: `${helicopter}, draw at ${place}`,
  words: `${inWords(litres, 'L')} planned for ${programme}, no report. The level still counts on them: ask ${helicopter}, or ask for a count.`,
});

/** A strip whose surface is unknown: what was last said, and what is planned on instead. */
const stripRow = (strip: Strip, calendar: Calendar, kept: KeptSurfaceReport | undefined): WordsRow | null => {
  if (strip.surface !== null) return null;
  const { place, radioTime, reportedAt, reported, by, counts } = strip;
  const last = reportedAt === null ? 'No report yet.' : `${calendar.when(reportedAt)}: ${reported}, ${by}.`;
  return {
    key: `strip ${place}`,
    time: radioTime === null ? 'no radio' : `due ${radioTime}`,
    head: `${place} surface`,
    words: `${last} The plan counts on ${counts}.${keptWords(kept, calendar)}`,
  };
};

const keptWords = (kept: KeptSurfaceReport | undefined, { when }: Calendar): string =>
  kept === undefined
    ? ''
    : ` Kept here, not sent: ${kept.report.state}, ${when(kept.report.at)}, ${kept.report.by}.`;

/** "3 h", and from two days on "12 days". */
export const ageWords = (since: string, asOf: string): string =>
  timeWords(Math.max(0, (Date.parse(asOf) - Date.parse(since)) / 60_000));

export const timeWords = (minutes: number): string => {
  const hours = minutes / 60;
  if (hours < 1) return `${Math.round(minutes)} min`;
  return hours < 48 ? inWords(Math.floor(hours), 'h') : inWords(Math.floor(hours / 24), 'days');
};

/** Who is away, those longest expected first; then who is down. */
export const awayRows = ({ away, overdueRule }: Morning, calendar: Calendar): readonly WordsRow[] =>
  away.map((flight) => ({
    key: flight.flight,
    time: flight.word === 'down and well' ? 'down' : calendar.when(flight.expectedBackAt),
    head: `${flight.flight}, ${flight.aircraft} ${[flight.fromPlace, ...flight.stops.map(({ place }) => place)].join('-')}${flight.pilot === null ? '' : `, ${flight.pilot}`}`,
    words: awayWords(flight, overdueRule, calendar),
    grave: flight.word === 'overdue',
  }));

const awayWords = (flight: Away, rule: Morning['overdueRule'], { when }: Calendar): string => {
  const { word, offAt, landedAt, expectedBackAt, overdueAt } = flight;
  if (word === 'down and well') return `Down and well${landedAt === null ? '' : ` ${when(landedAt)}`}.`;
  const off = offAt === null ? 'Take-off not timed' : `Off ${when(offAt)}`;
  if (word === 'in the circuit') {
    const late =
      overdueAt === null ? 'No minutes are set after which it is overdue.' : `Overdue at ${when(overdueAt)}.`;
    return `In the circuit. ${off}, expected back ${when(expectedBackAt)}. ${late}`;
  }
  const follow = rule === null ? '' : ` Then as the manual says: ${rule.reference}.`;
  return `Overdue. ${off}, expected back ${when(expectedBackAt)}. Call it, its strips and the other crews on the radio now.${follow}`;
};
