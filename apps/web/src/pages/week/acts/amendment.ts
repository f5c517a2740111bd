import type { WeekFlight } from '../week-read.js';

/** What the form of an amendment holds, as it is typed. */
export interface Draft {
  readonly date: string;
  readonly aircraft: string;
  /** "07:30"; empty: the first time that aircraft and pilot are free. */
  readonly departs: string;
  /** Empty: nobody named. */
  readonly pilot: string;
  readonly stops: readonly { readonly place: string; readonly drums: string }[];
}

interface Stop {
  readonly place: string;
  readonly drums: number;
}

/** Only what is to be other than it is. */
export interface Amendment {
  readonly date?: string;
  readonly aircraft?: string;
  readonly pilot?: string | null;
  readonly stops?: readonly Stop[];
  readonly departs?: string | null;
}

export const draftOf = ({ date, aircraft, departs, pilot }: WeekFlight, stops: readonly Stop[]): Draft => ({
  date,
  aircraft,
  departs,
  pilot: pilot ?? '',
  stops: stops.map(({ place, drums }) => ({ place, drums: String(drums) })),
});

/**
 * Null: nothing is changed. A stop with 0 drums is left out; another day or aircraft finds its own time, unless one is
 * typed. */
export const amendmentOf = (before: Draft, now: Draft): Amendment | null => {
  const amendment: Amendment = {
    ...(now.date === before.date ? {} : { date: now.date }),
    ...(now.aircraft === before.aircraft ? {} : { aircraft: now.aircraft }),
    ...departsOf(before, now),
    ...(now.pilot === before.pilot ? {} : { pilot: now.pilot === '' ? null : now.pilot }),
    ...(sameStops(before, now) ? {} : { stops: stopsOf(now) }),
  };
  return Object.keys(amendment).length === 0 ? null : amendment;
};

const departsOf = (before: Draft, now: Draft): Pick<Amendment, 'departs'> => {
  const typed = hourOf(now.departs);
  const isMoved = now.date !== before.date || now.aircraft !== before.aircraft;
  if (typed === '' || (isMoved && typed === before.departs)) return { departs: null };
  return typed === before.departs ? {} : { departs: typed };
};

/** "0830" and "8:30" are 08:30, as in a radio line. */
const hourOf = (typed: string): string =>
  typed
    .trim()
    .replace(/^(\d{1,2}):?(\d\d)$/, (_, hour: string, rest: string) => `${hour.padStart(2, '0')}:${rest}`);

/** What is wrong before the server is asked. */
export const draftFault = ({ stops, departs }: Draft): string | undefined => {
  if (stops.some(({ drums }) => !/^\d{1,2}$/.test(drums.trim()))) return 'Drums are a whole number, 0 to 99.';
  if (stops.every(({ drums }) => Number(drums) === 0))
    return 'Without a drum it is no flight: decline it, or call it off.';
  if (!/^(([01]\d|2[0-3]):[0-5]\d)?$/.test(hourOf(departs)))
    return 'Off is a time, as 07:30 or 0730, or empty.';
  return undefined;
};

const stopsOf = ({ stops }: Draft): readonly Stop[] =>
  stops.map(({ place, drums }) => ({ place, drums: Number(drums) })).filter(({ drums }) => drums > 0);

const sameStops = (one: Draft, other: Draft): boolean =>
  JSON.stringify(stopsOf(one)) === JSON.stringify(stopsOf(other));
