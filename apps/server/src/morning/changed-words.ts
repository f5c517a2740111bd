import type { SurfaceReport } from '@drumline/network';
import { dateWords, type IsoInstant, printNumber } from '@drumline/units';
import type { Changed } from './morning-answer.js';

/** One piece of news as the database tells it. */
export interface ChangedRow {
  readonly kind: 'surface' | 'movement' | 'flight' | 'plan' | 'territory';
  readonly at: IsoInstant;
  readonly writtenAt: IsoInstant | null;
  readonly person: string | null;
  readonly means: string | null;
  readonly facts: Readonly<Record<string, unknown>>;
}

/** The report that stands at each place. */
type Latest = ReadonlyMap<string, SurfaceReport>;

/** In words: what, then who and by which means; of a surface report also that it does not count where a later one stands. */
export const changedWords = (row: ChangedRow, latest: Latest): Changed => ({
  at: row.at,
  writtenAt: row.writtenAt !== null && row.writtenAt < row.at ? row.writtenAt : null,
  what: whatOf[row.kind](row.facts, latest),
  source: sourceOf(row),
});

type Facts = ChangedRow['facts'];

const text = (value: unknown): string => (typeof value === 'string' ? value : '');

const surfaceWords = ({ report }: Facts, latest: Latest): string => {
  const { place, state, untilDate, at } = report as SurfaceReport;
  const until = untilDate === undefined ? '' : `, to the end of ${dayWords(untilDate)}`;
  const standing = latest.get(place);
  const isOutranked = standing !== undefined && Date.parse(standing.at) > Date.parse(at);
  return `${place} ${state}${until}${isOutranked ? '; kept, a later report stands' : ''}`;
};

/** "Wed 16". */
const dayWords = (day: string): string =>
  new Intl.DateTimeFormat('en-GB', { weekday: 'short', day: 'numeric', timeZone: 'UTC' })
    .format(new Date(day))
    .replace(',', '');

const sourceOf = ({ kind, person, means, facts }: ChangedRow): string => {
  const who = person ?? 'the program';
  if (kind === 'surface') return `${text((facts.report as Record<string, unknown>).by)}; entered by ${who}`;
  return means === null ? who : `${who}, ${meansWords[means] ?? means}`;
};

const meansWords: Readonly<Record<string, string>> = {
  radio: 'by radio',
  paper: 'from paper',
  phone: 'by phone',
  screen: 'at the screen',
};

const movementWords = (facts: Facts): string => {
  const { kind, place, flight, drums, millilitres } = facts;
  const first = facts.first as Readonly<Record<string, unknown>>;
  const litres = `${printNumber(Number(millilitres) / 1000)} L`;
  const many = `${String(drums)} ${drums === 1 ? 'drum' : 'drums'}`;
  const what = text(first.drum) === '' ? '' : ` ${text(first.drum)}`;
  switch (kind) {
    case 'left at':
      return `${many} left at ${text(place)}${text(flight) === '' ? '' : `, ${text(flight)}`}`;
    case 'counted':
      return `${text(place)} counted, ${litres}${first.seenFrom === 'air' ? ', from the air' : ''}`;
    case 'drawn':
      return `${litres} drawn at ${text(place)} into ${text(first.into)}`;
    case 'slung':
      return `${many} slung ${text(first.from)} to ${text(first.to)}`;
    case 'filled':
      return `${many} filled at ${text(place)}`;
    case 'held':
    case 'released':
      return `${ofWords(first.of)} ${kind}: ${text(first.reason)}`;
    case 'corrected':
      return `An entry was corrected: ${text(first.reason)}`;
    case 'retest passed':
      return `${ofWords(first.of)}: retest passed, to ${dateWords(text(first.retestDue))}`;
    default:
      return `Drum${what} ${text(kind)}${text(place) === '' ? '' : ` at ${text(place)}`}`;
  }
};

const ofWords = (of: unknown): string => {
  const { batch, drum } = (of ?? {}) as Record<string, unknown>;
  return batch === undefined ? `Drum ${text(drum)}` : `Batch ${text(batch)}`;
};

const flightWords = ({ flight, act, state, reason }: Facts): string => {
  const why = text(reason) === '' ? '' : `: ${text(reason)}`;
  return `${text(flight)} ${actWords[text(act)] ?? text(state)}${why}`;
};

/** Acts that the state does not tell. */
const actWords: Readonly<Record<string, string>> = {
  amend: 'amended',
  'let go': 'let go',
  'hold in place': 'held in place',
  'free to move': 'free to move again',
  unmark: 'needs no decision any more',
  refuse: 'refused by its crew',
};

const whatOf: Readonly<Record<ChangedRow['kind'], (facts: Facts, latest: Latest) => string>> = {
  surface: surfaceWords,
  movement: movementWords,
  flight: flightWords,
  plan: () => 'A plan was accepted',
  // Of settings and rules there is one of each: nobody calls it "current".
  territory: ({ did, subject, changed }) => {
    const what = Array.isArray(changed) && changed.length > 0 ? `: ${changed.join(', ')}` : '';
    return `${text(subject)
      .replace(/ current$/, '')
      .replace(/\b\d{4}-\d\d-\d\d\b/g, dayWords)} ${text(did)}${what}`;
  },
};
