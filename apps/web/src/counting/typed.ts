import type { Calendar } from '../api/index.js';
import { figureIn } from '../ui/typed-figure.js';

/** "06:10" of the territory's today as an instant; undefined: no time of day. Later than now is taken as yesterday's. */
export const instantOfTime = (
  typed: string,
  { now, time }: Pick<Calendar, 'now' | 'time'>,
): string | undefined => {
  const read = /^([01]?\d|2[0-3]):?([0-5]\d)$/.exec(typed.trim());
  if (read === null) return undefined;
  const [hours, minutes] = time(now).split(':').map(Number);
  const ago = hours! * 60 + minutes! - (Number(read[1]) * 60 + Number(read[2]));
  const at = now.getTime() - (ago < 0 ? ago + 24 * 60 : ago) * 60_000;
  return `${new Date(at).toISOString().slice(0, 16)}Z`;
};

interface TimeSaid {
  /** The day that the time is read as, where it is not today. */
  readonly words: string | undefined;
  /** Read as half a day ago and more, it is more likely a slip. */
  readonly doubts: readonly string[];
}

/** What is said of a time before it is kept: one that is still to come today is read as yesterday's. */
export const timeSaid = (
  happenedAt: string | undefined,
  { now, today, isoDay, day, time }: Pick<Calendar, 'now' | 'today' | 'isoDay' | 'day' | 'time'>,
): TimeSaid => {
  if (happenedAt === undefined || isoDay(happenedAt) === today) return { words: undefined, doubts: [] };
  const words = `${time(happenedAt)} is still to come today: read as ${day(happenedAt)}, ${time(happenedAt)}.`;
  const hoursAgo = (now.getTime() - Date.parse(happenedAt)) / 3_600_000;
  return hoursAgo < 12 ? { words, doubts: [] } : { words: undefined, doubts: [words] };
};

/** Whole litres as typed, with or without a comma; undefined: not a number of litres. */
export const litresTyped = (typed: string): number | undefined => {
  const litres = figureIn(typed);
  return litres !== null && /^\d{1,6}$/.test(String(litres)) ? litres : undefined;
};
