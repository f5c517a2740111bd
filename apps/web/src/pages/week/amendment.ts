import type { WeekFlight } from './week-read.js';

/** What the form of an amendment holds, as it is typed. */
export interface Draft {
  readonly date: string;
  readonly aircraft: string;
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
  readonly departs?: null;
}

export const draftOf = ({ date, aircraft, pilot }: WeekFlight, stops: readonly Stop[]): Draft => ({
  date,
  aircraft,
  pilot: pilot ?? '',
  stops: stops.map(({ place, drums }) => ({ place, drums: String(drums) })),
});

/** Null: nothing is changed. A stop with 0 drums is left out; another day or aircraft finds its own time. */
export const amendmentOf = (before: Draft, now: Draft): Amendment | null => {
  const isMoved = now.date !== before.date || now.aircraft !== before.aircraft;
  const amendment: Amendment = {
    ...(now.date === before.date ? {} : { date: now.date }),
    ...(now.aircraft === before.aircraft ? {} : { aircraft: now.aircraft }),
    ...(isMoved ? { departs: null } : {}),
    ...(now.pilot === before.pilot ? {} : { pilot: now.pilot === '' ? null : now.pilot }),
    ...(sameStops(before, now) ? {} : { stops: stopsOf(now) }),
  };
  return Object.keys(amendment).length === 0 ? null : amendment;
};

/** What is wrong before the server is asked. */
export const draftFault = ({ stops }: Draft): string | undefined => {
  if (stops.some(({ drums }) => !/^\d{1,2}$/.test(drums.trim()))) return 'Drums are a whole number, 0 to 99.';
  if (stops.every(({ drums }) => Number(drums) === 0))
    return 'Without a drum it is no flight: decline it, or call it off.';
  return undefined;
};

const stopsOf = ({ stops }: Draft): readonly Stop[] =>
  stops.map(({ place, drums }) => ({ place, drums: Number(drums) })).filter(({ drums }) => drums > 0);

const sameStops = (one: Draft, other: Draft): boolean =>
  JSON.stringify(stopsOf(one)) === JSON.stringify(stopsOf(other));
