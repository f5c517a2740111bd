import type { KeptClock } from './kept.js';

/** Who reports, and by which clock; ids are made here, before any network. */
export interface Reporter {
  readonly by: string;
  readonly clock: KeptClock;
  readonly newId: () => string;
}

/** Over this a person and a report are told that the phone's clock is off. */
export const oddClockMs = 5 * 60_000;

/** When it happened, by base's clock as far as the phone knew it. */
export const happened = ({ clock }: Reporter): string => `${clock.at.slice(0, 19)}Z`;

/** What every report says of itself; where the phone's own clock was off, that stands beside the words. */
export const written = (reporter: Reporter, words?: string) => {
  const at = happened(reporter);
  const note = [words, clockWords(reporter.clock)].filter((each) => each !== undefined).join(' ');
  return {
    happenedAt: at,
    writtenAt: at,
    means: 'phone',
    by: reporter.by,
    witnesses: [],
    ...(note === '' ? {} : { note }),
  } as const;
};

const clockWords = ({ phoneAt, serverAheadMs: off }: KeptClock): string | undefined =>
  off === null || Math.abs(off) <= oddClockMs
    ? undefined
    : `Phone's clock ${phoneAt}, off by ${Math.round(off / 60_000)} min when last compared.`;
