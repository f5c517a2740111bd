import { type IsoDate, litres, pounds, print } from '@drumline/units';

const weekdays = ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'];
const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/** A day as people say it: "Tue 15 Jun". */
export const dayWords = (date: IsoDate): string => {
  const day = new Date(`${date}T00:00:00Z`);
  return `${weekdays[day.getUTCDay()]} ${day.getUTCDate()} ${months[day.getUTCMonth()]}`;
};

/** Whole litres, rounded once: "1,200 L". */
export const litreWords = (amount: number): string => print(litres(amount), 'L');

/** Whole pounds, rounded once: "6,261 lb". */
export const poundWords = (weight: number): string => print(pounds(weight), 'lb');

/** "1 drum", "4 drums". */
export const drumWords = (drums: number): string => `${drums} ${drums === 1 ? 'drum' : 'drums'}`;

/** "A1", "A1 and A2", "A1, A2 and B1". */
export const listWords = (names: readonly string[]): string =>
  names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
