import type { UnloadOrStay } from '@drumline/loading';
import {
  type Cents,
  type CentsPerLitre,
  type IsoDate,
  type IsoInstant,
  localDate,
  localTime,
  pounds,
  print,
  printNumber,
  printPrice,
} from '@drumline/units';

const weekdays = ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'];
const months = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];

/** "Mon 14 June". */
export function printDay(date: IsoDate): string {
  const [year, month, day] = date.split('-').map(Number) as [number, number, number];
  return `${weekdays[new Date(Date.UTC(year, month - 1, day)).getUTCDay()]} ${day} ${months[month - 1]}`;
}

/** "Mon 14 June 06:00", local. */
export function localText(instant: IsoInstant, timeZone: string): string {
  return `${printDay(localDate(instant, timeZone))} ${localTime(instant, timeZone)}`;
}

/** "1 drum", "4 drums". */
export function countOf(count: number, one: string, many = `${one}s`): string {
  return `${printNumber(count)} ${count === 1 ? one : many}`;
}

/** Money without hundredths, for tables: "1,237 cr". */
export function wholeMoney(amount: Cents, currency: string): string {
  return `${printNumber(amount / 100)} ${currency}`;
}

/** A share as a percentage: "12.4 %". */
export function percent(share: number, decimals = 1): string {
  return `${printNumber(share * 100, decimals)} %`;
}

export const price = (centsPerLitre: number | null, currency: string): string =>
  centsPerLitre === null ? '-' : printPrice(centsPerLitre as CentsPerLitre, currency);

/** By how much an arrival is too heavy to leave again, as the load sheet adds it; never "0 lb". */
export const overWords = ({ printedOverLb }: UnloadOrStay): string =>
  print(pounds(Math.max(1, printedOverLb)), 'lb');
