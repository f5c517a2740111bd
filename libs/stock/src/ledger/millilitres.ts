import { type Litres, litres, type Quantity } from '@drumline/units';

/** A whole number of millilitres: sums of the ledger are exact, in whatever order they are made. */
export type Millilitres = Quantity<'mL'>;

/** Litres as whole millilitres, to the nearest. */
export const millilitresOf = (amount: Litres): Millilitres => Math.round(amount * 1000) as Millilitres;

/** Millilitres as litres. */
export const litresOf = (amount: Millilitres): Litres => litres(amount / 1000);
