import { inWords } from './qty.js';

/** "13 h", and from two days on "12 days". */
export const ageInWords = (hours: number): string =>
  hours < 1
    ? 'under 1 h'
    : hours < 48
      ? inWords(Math.floor(hours), 'h')
      : inWords(Math.floor(hours / 24), 'days');

const oldCountHours = 7 * 24;

/** A count of more than a week ago says little of what is there now. */
export const isOldCount = (ageHours: number): boolean => ageHours > oldCountHours;
