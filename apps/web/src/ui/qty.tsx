import { printNumber } from '@drumline/units';

export type Unit =
  | 'L'
  | 'kg'
  | 'lb'
  | 'cr'
  | 'cr/L'
  | 'NM'
  | 'h'
  | 'drums'
  | 'days'
  | 'kt'
  | '%'
  | 'ft'
  | 'm';

interface QtyProps {
  readonly value: number;
  readonly unit: Unit | (string & {});
  readonly digits?: number;
  /** Writes + before what is above zero. */
  readonly sign?: boolean;
  /** The same in a second unit, in brackets. */
  readonly also?: { readonly value: number; readonly unit: Unit };
}

/** 8,528 and −1.5, as on paper; where wanted with a + before what is above zero. */
export const figure = (value: number, digits = 0, sign = false): string => {
  const printed = printNumber(value, digits);
  return sign && value > 0 && /[1-9]/.test(printed) ? `+${printed}` : printed;
};

/** What is counted, one of it: whatever is not in the table is the same for one and for more. */
const one: Readonly<Record<string, string>> = {
  drums: 'drum',
  days: 'day',
  flights: 'flight',
  passengers: 'passenger',
  'sling moves': 'sling move',
  places: 'place',
  caches: 'cache',
  items: 'item',
  lines: 'line',
  entries: 'entry',
  'entries of stock': 'entry of stock',
  'changes of the territory': 'change of the territory',
  plans: 'plan',
};

/** "6 drums", "1 drum", "531 lb", as text: for sentences and labels. */
export const inWords = (value: number, unit: string, digits = 0, sign = false): string => {
  const size = figure(value, digits, sign);
  return `${size} ${size === '1' ? (one[unit] ?? unit) : unit}`;
};

/** "1,200 L"; below zero "short 120 L", as no place holds less than nothing: it is what is asked for beyond the stock. */
export const stockInWords = (litres: number): string =>
  figure(litres).startsWith('−') ? `short ${inWords(-litres, 'L')}` : inWords(litres, 'L');

/** A number with its unit, never parted by a line end. */
export const Qty = ({ value, unit, digits = 0, sign = false, also }: QtyProps) => (
  <span className="qty">
    {inWords(value, unit, digits, sign)}
    {also !== undefined && <small> ({inWords(also.value, also.unit)})</small>}
  </span>
);
