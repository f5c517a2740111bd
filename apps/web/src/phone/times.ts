import { line } from './line.js';

const as = (at: Date | string, options: Intl.DateTimeFormatOptions): string => {
  // A day without a time is the day itself, wherever it is read.
  const isDay = typeof at === 'string' && /^\d{4}-\d\d-\d\d$/.test(at);
  const timeZone = isDay ? 'UTC' : (line.get().heard?.timeZone ?? 'UTC');
  return new Intl.DateTimeFormat('en-GB', { ...options, timeZone }).format(new Date(at)).replaceAll(',', '');
};

/** "06:41", in the territory's time. */
export const timeWords = (at: Date | string): string =>
  as(at, { hour: '2-digit', minute: '2-digit', hourCycle: 'h23' });

/** "Tuesday 15 June". */
export const dateWords = (at: Date | string): string =>
  as(at, { weekday: 'long', day: 'numeric', month: 'long' });

/** "Tue 15". */
export const dayWords = (at: Date | string): string => as(at, { weekday: 'short', day: 'numeric' });

/** "06:41", and "Mon 14 06:41" where it was another day than `now`. */
export const whenWords = (at: Date | string, now: Date): string =>
  dayWords(at) === dayWords(now) ? timeWords(at) : `${dayWords(at)} ${timeWords(at)}`;
