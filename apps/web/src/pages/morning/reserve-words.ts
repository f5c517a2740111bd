import { inWords } from '../../ui/index.js';
import type { Morning } from './morning-read.js';

type Reserves = readonly Pick<Morning['fuel'][number], 'place' | 'reserveLitres' | 'reserveSetLitres'>[];

interface ReserveSaid {
  readonly value: string;
  readonly note: string;
  readonly isShort: boolean;
}

/** The medevac reserve of all caches: locked whole, or how much of it is there, and where it is not. */
export const reserveSaid = (fuel: Reserves): ReserveSaid => {
  const set = fuel.filter(({ reserveSetLitres }) => reserveSetLitres > 0);
  const short = set.filter(({ reserveLitres, reserveSetLitres }) => reserveLitres < reserveSetLitres);
  const sum = (litres: (each: Reserves[number]) => number) =>
    inWords(
      set.reduce((total, each) => total + litres(each), 0),
      'L',
    );
  const whole = sum(({ reserveSetLitres }) => reserveSetLitres);
  if (short.length === 0)
    return { value: whole, note: `locked, ${inWords(set.length, 'caches')}`, isShort: false };
  return {
    value: sum(({ reserveLitres }) => reserveLitres),
    note: `of ${whole}, short at ${short.map(({ place }) => place).join(', ')}`,
    isShort: true,
  };
};

/** "120 L of 200 L" where some of it is missing. */
export const reserveAt = ({ reserveLitres, reserveSetLitres }: Reserves[number]): string =>
  reserveLitres < reserveSetLitres
    ? `${inWords(reserveLitres, 'L')} of ${inWords(reserveSetLitres, 'L')}`
    : inWords(reserveLitres, 'L');
