import type { Calendar } from '../api/index.js';

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

/** Whole litres as typed, with or without a comma; undefined: not a number of litres. */
export const litresTyped = (typed: string): number | undefined => {
  const plain = typed.trim().replaceAll(',', '');
  return /^\d{1,6}$/.test(plain) ? Number(plain) : undefined;
};
