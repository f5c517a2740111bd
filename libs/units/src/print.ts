import type { Cents, CentsPerLitre, Quantity } from './quantity.js';

/** Units as they are printed after the figure; money has its own printers. */
const printedUnits = {
  kg: 'kg',
  lb: 'lb',
  L: 'L',
  'US gal': 'US gal',
  NM: 'NM',
  km: 'km',
  ft: 'ft',
  m: 'm',
  in: 'in',
  cm: 'cm',
  kt: 'kt',
  h: 'h',
  min: 'min',
  day: 'd',
  'lb/h': 'lb/h',
  'L/day': 'L/d',
  'kg/L': 'kg/L',
  degC: '°C',
} as const;

export type PrintedUnit = keyof typeof printedUnits;

/**
 * A figure with its unit: `print(pounds(8528), 'lb')` is "8,528 lb". The unit must be the quantity's own, or it does
 * not compile. Throws a RangeError for a figure that is not finite.
 */
export const print = <U extends PrintedUnit>(quantity: Quantity<U>, unit: NoInfer<U>, decimals = 0): string =>
  `${printNumber(quantity, decimals)} ${printedUnits[unit]}`;

/** Cents as money in the operator's currency: "1,237.60 cr". Throws a RangeError for a figure that is not finite. */
export const printMoney = (amount: Cents, currency: string): string =>
  `${printNumber(amount / 100, 2)} ${currency}`;

/** A price per litre: "1.80 cr/L". Throws a RangeError for a figure that is not finite. */
export const printPrice = (price: CentsPerLitre, currency: string): string =>
  `${printNumber(price / 100, 2)} ${currency}/L`;

/**
 * A figure without a unit (a count, a percentage): thousands in commas, a true minus, rounded once to the decimals
 * asked for, halves away from zero; never "−0". Throws a RangeError for a figure that is not finite.
 */
export const printNumber = (value: number, decimals = 0): string => {
  if (!Number.isFinite(value))
    throw new RangeError(`Only a finite figure can be printed, not ${value}: look for a division by zero.`);
  const [whole = '', fraction] = Math.abs(value).toFixed(decimals).split('.');
  const figure = whole.replace(/\B(?=(\d{3})+$)/g, ',') + (fraction === undefined ? '' : `.${fraction}`);
  return value < 0 && /[1-9]/.test(figure) ? `\u2212${figure}` : figure;
};

/** Decimals of a figure that people gave, from none: a limit is printed as it was given, as rounding would move it. */
export const decimalsOf = (given: number): number => String(given).split('.')[1]?.length ?? 0;
