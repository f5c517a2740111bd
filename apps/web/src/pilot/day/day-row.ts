import type { PhoneFlight } from '@drumline/contract';
import { countWords } from '../leg/fact.js';
import { legWords } from '../leg/leg-words.js';
import type { OwnReports } from '../reports/own-reports.js';

/** What the list of the day says of a flight: the same as its card. */
export interface DayRow {
  readonly drums: string;
  readonly lines: readonly { readonly of: string | null; readonly words: string }[];
}

/** By the load as planned until this phone has reported drums; from then on by what is still aboard. */
export const dayRow = (
  flight: PhoneFlight,
  { drums: reported, downAt }: Pick<OwnReports, 'drums' | 'downAt'>,
  softCounts: boolean,
): DayRow => {
  const numbers = flight.stops.flatMap(({ drums }) => drums);
  if (reported.length > 0) {
    const left = new Set(reported.flatMap(({ drum, kind }) => (kind === 'left at' ? [drum] : [])));
    const back = reported.filter(({ kind }) => kind === 'brought home').map(({ drum }) => drum);
    const aboard = new Set([...numbers, ...back].filter((number) => !left.has(number)));
    return {
      drums: downAt === null ? `${aboard.size} still aboard` : countWords(numbers.length),
      lines: [{ of: null, words: `${left.size} left, ${back.length} brought back, by this phone` }],
    };
  }
  const words = legWords(flight, 0, softCounts);
  const { binds, leave } = words ?? { binds: null, leave: null };
  return {
    drums: countWords(numbers.length),
    lines: [
      ...(binds === null ? [] : [{ of: 'Binds', words: `${binds.main}, ${binds.rest}` }]),
      ...(leave?.over === true ? [{ of: null, words: leave.main }] : []),
    ],
  };
};
