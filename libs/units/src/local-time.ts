import { type ClockTime, dateWords, daysBetween, type IsoDate, type IsoInstant } from './calendar.js';
import { type Minutes, minutes } from './quantity.js';

const millisecondsPerMinute = 60_000;

/** Minutes since 1970-01-01T00:00Z, to compare and subtract instants (as text they do not sort: seconds are optional). */
export const epochMinutes = (instant: IsoInstant): Minutes =>
  minutes(Date.parse(instant) / millisecondsPerMinute);

/** The instant so many minutes after 1970-01-01T00:00Z, to the nearest second. */
export const instantAt = (sinceEpoch: Minutes): IsoInstant =>
  `${new Date(Math.round(sinceEpoch * 60) * 1000).toISOString().slice(0, 19)}Z`;

/** The day that the calendar on the wall shows at an instant. Throws a RangeError for an unknown IANA time zone. */
export const localDate = (instant: IsoInstant, timeZone: string): IsoDate =>
  wall(instant, timeZone).slice(0, 10);

/** What the clock on the wall shows at an instant, to the minute below. Throws a RangeError for an unknown time zone. */
export const localTime = (instant: IsoInstant, timeZone: string): ClockTime =>
  wall(instant, timeZone).slice(11, 16);

/**
 * The instant at which the clock on the wall shows a day and time. Where the clocks go back and show it twice, the
 * first; where they go forward and skip it, the time moved forward by what was skipped (02:30 becomes 03:30).
 * Throws a RangeError for an unknown time zone.
 */
export const instantOf = (date: IsoDate, time: ClockTime, timeZone: string): IsoInstant => {
  const asUtc = epochMinutes(`${date}T${time}Z`);
  const offsetAt = (sinceEpoch: number) =>
    epochMinutes(`${wall(instantAt(minutes(sinceEpoch)), timeZone)}Z`) - sinceEpoch;
  // Clocks change by less than a day, so the offsets a day earlier and later are those before and after any change.
  const before = asUtc - offsetAt(asUtc - 1440);
  const after = asUtc - offsetAt(asUtc + 1440);
  const shows = (sinceEpoch: number) => sinceEpoch + offsetAt(sinceEpoch) === asUtc;
  return instantAt(minutes(!shows(before) && shows(after) ? after : before));
};

/** Seen from a moment so many days away or less, the day of the month says which month is meant. */
const nearDays = 14;

const instantsIn = /\b\d{4}-\d\d-\d\dT\d\d:\d\d(?::\d\d(?:\.\d+)?)?Z/g;

/**
 * A text with each of its instants as people at the territory read it: "Mon 14, 05:40" for `2027-06-14T05:40Z`, and
 * "Mon 14 June 2027, 05:40" seen from more than two weeks away. Throws a RangeError for an unknown time zone.
 */
export const inLocalTime = (
  text: string,
  { asOf, timeZone }: { readonly asOf: IsoInstant; readonly timeZone: string },
): string =>
  text.replaceAll(instantsIn, (instant) => {
    if (Number.isNaN(Date.parse(instant))) return instant;
    const day = localDate(instant, timeZone);
    const isNear = Math.abs(daysBetween(day, localDate(asOf, timeZone))) <= nearDays;
    const words = dateWords(day);
    return `${isNear ? words.split(' ').slice(0, 2).join(' ') : words}, ${localTime(instant, timeZone)}`;
  });

const formats = new Map<string, Intl.DateTimeFormat>();

/** Local date and time, `YYYY-MM-DDTHH:MM`. */
const wall = (instant: IsoInstant, timeZone: string): string => {
  const parts = new Map(
    formatOf(timeZone)
      .formatToParts(Date.parse(instant))
      .map(({ type, value }) => [type, value]),
  );
  return `${parts.get('year')}-${parts.get('month')}-${parts.get('day')}T${parts.get('hour')}:${parts.get('minute')}`;
};

const formatOf = (timeZone: string): Intl.DateTimeFormat => {
  // Making a format costs a thousand times as much as using it.
  const format =
    formats.get(timeZone) ??
    new Intl.DateTimeFormat('en-CA', {
      timeZone,
      hourCycle: 'h23',
      year: 'numeric',
      month: '2-digit',
      day: '2-digit',
      hour: '2-digit',
      minute: '2-digit',
    });
  formats.set(timeZone, format);
  return format;
};
