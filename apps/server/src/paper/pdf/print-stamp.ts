import type { IsoDate } from '@drumline/units';

/** Who prints, and when by the territory's clock. */
export interface PrintStamp {
  /** "Mon 14 June 2027 17:02". */
  readonly at: string;
  readonly by: string;
}

const named = (date: IsoDate, weekday: 'long' | 'short'): string => {
  const day = new Date(`${date}T00:00:00Z`);
  const part = (options: Intl.DateTimeFormatOptions) =>
    day.toLocaleDateString('en-GB', { ...options, timeZone: 'UTC' });
  return `${part({ weekday })} ${part({ day: 'numeric' })} ${part({ month: 'long' })} ${part({ year: 'numeric' })}`;
};

/** "Tuesday 15 June 2027". */
export const longDay = (date: IsoDate): string => named(date, 'long');

/** "Tue 15 June 2027". */
export const shortDay = (date: IsoDate): string => named(date, 'short');

/** "15 June 2027". */
export const dayOfYear = (date: IsoDate): string => named(date, 'long').replace(/^\S+ /, '');
