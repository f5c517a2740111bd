import type { Cache } from '@drumline/stock';
import { type IsoDate, print } from '@drumline/units';
import type { FallsAhead, Level } from './cache-view.js';

const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/** "8 Feb 2028". */
export const shortDate = (date: IsoDate): string => {
  const [year, month, day] = date.split('-').map(Number);
  return `${day} ${months[month! - 1]} ${year}`;
};

/** "1 day", "12 days". */
export const daysWords = (from: IsoDate, until: IsoDate): string => {
  const days = Math.round((Date.parse(until) - Date.parse(from)) / 86_400_000);
  return days === 1 ? '1 day' : `${days} days`;
};

export const levelWords: Readonly<Record<Level, string>> = {
  enough: 'Enough',
  'below minimum': 'Below minimum',
  'below critical': 'Below critical',
};

/**
 * Where the stock of a cache leads, and by which flights: Morning counts the offered ones as well, a crew only those that
 * are approved.
 */
export const aheadWords = (
  { minimumLitres, criticalLitres }: Cache,
  { belowMinimumOn, belowCriticalOn }: FallsAhead,
  dayWords: (day: IsoDate) => string,
): string => {
  const falls = [
    ...(belowMinimumOn === null
      ? []
      : [`below the minimum of ${print(minimumLitres, 'L')} at the end of ${dayWords(belowMinimumOn)}`]),
    ...(belowCriticalOn === null
      ? []
      : [`below critical, ${print(criticalLitres, 'L')}, at the end of ${dayWords(belowCriticalOn)}`]),
  ];
  return falls.length === 0
    ? `Stays above the minimum of ${print(minimumLitres, 'L')}, approved flights counted.`
    : `${begun(falls.join(', '))}; approved flights counted, not the offered ones.`;
};

/** A figure as somebody has typed it; null: none, or no number of nought or more. */
export const figure = (text: string): number | null => {
  const typed = text.trim().replace(',', '.');
  if (!/^\d{1,6}(\.\d{1,3})?$/.test(typed)) return null;
  return Number(typed);
};

/** As the beginning of a sentence. */
export const begun = (words: string): string => `${words.slice(0, 1).toUpperCase()}${words.slice(1)}`;
