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

/** 8,528 and −1.5: thousands with a comma, the true minus sign. */
export const figure = (value: number, digits = 0, sign = false): string => {
  const size = Math.abs(value).toLocaleString('en-GB', {
    minimumFractionDigits: digits,
    maximumFractionDigits: digits,
  });
  const isZero = Number(size.replaceAll(',', '')) === 0;
  return `${value < 0 && !isZero ? '−' : sign && !isZero ? '+' : ''}${size}`;
};

const one: Readonly<Record<string, string>> = { drums: 'drum', days: 'day' };

/** "6 drums", "1 drum", "531 lb", as text: for sentences and labels. */
export const inWords = (value: number, unit: string, digits = 0, sign = false): string => {
  const size = figure(value, digits, sign);
  return `${size} ${size === '1' ? (one[unit] ?? unit) : unit}`;
};

/** A number with its unit, never parted by a line end. */
export const Qty = ({ value, unit, digits = 0, sign = false, also }: QtyProps) => (
  <span className="qty">
    {inWords(value, unit, digits, sign)}
    {also !== undefined && <small> ({inWords(also.value, also.unit)})</small>}
  </span>
);
