import { type Minutes, minutes } from './quantity.js';

/** A calendar day in the scenario's time zone, `YYYY-MM-DD`. */
export type IsoDate = string;

/** An instant in UTC, `YYYY-MM-DDTHH:MM(:SS)Z`. */
export type IsoInstant = string;

/** A local clock time, `HH:MM`. */
export type ClockTime = string;

const millisecondsPerDay = 86_400_000;
const midnightUtc = (date: IsoDate): number => Date.parse(`${date}T00:00:00Z`);

/** Whether the text is a day of the calendar written `YYYY-MM-DD` (2027-02-29 is not). */
export const isValidDate = (text: string): text is IsoDate => {
  const milliseconds = /^\d{4}-\d{2}-\d{2}$/.test(text) ? midnightUtc(text) : Number.NaN;
  return !Number.isNaN(milliseconds) && new Date(milliseconds).toISOString().startsWith(text);
};

/** The day that lies so many days after `date`; before it where `count` is negative. */
export const addDays = (date: IsoDate, count: number): IsoDate =>
  new Date(midnightUtc(date) + count * millisecondsPerDay).toISOString().slice(0, 10);

/** Days from `from` to `until`; negative where `until` is the earlier. */
export const daysBetween = (from: IsoDate, until: IsoDate): number =>
  (midnightUtc(until) - midnightUtc(from)) / millisecondsPerDay;

/** Place of a day in arrays by day: 0 on the first day, negative before it. */
export const dayIndex = (firstDay: IsoDate, date: IsoDate): number => daysBetween(firstDay, date);

/** So many days in a row, the first day first. */
export const daysFrom = (firstDay: IsoDate, count: number): IsoDate[] =>
  Array.from({ length: count }, (_, index) => addDays(firstDay, index));

/** Minutes from midnight to a clock time: 90 for `01:30`. */
export const minutesOfDay = (time: ClockTime): Minutes =>
  minutes(Number(time.slice(0, 2)) * 60 + Number(time.slice(3, 5)));

/**
 * The clock time so many minutes after midnight, to the minute below.
 * Throws a RangeError outside the day (under 0, or 1,440 and over).
 */
export const clockTimeAt = (sinceMidnight: Minutes): ClockTime => {
  const whole = Math.floor(sinceMidnight);
  if (!(whole >= 0 && whole < 1440))
    throw new RangeError(
      `A clock time lies between 0 and 1,439 minutes after midnight, not at ${sinceMidnight}.`,
    );
  const two = (part: number) => String(part).padStart(2, '0');
  return `${two(Math.floor(whole / 60))}:${two(whole % 60)}`;
};

/** A day with its year, as people say it of what is months away: "Wed 1 March 2028". */
export const dateWords = (date: IsoDate): string => fullDay.format(midnightUtc(date)).replaceAll(',', '');

const fullDay = new Intl.DateTimeFormat('en-GB', {
  weekday: 'short',
  day: 'numeric',
  month: 'long',
  year: 'numeric',
  timeZone: 'UTC',
});
