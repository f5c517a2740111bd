/** Litres as the ledger keeps them. */
export const millilitresIn = (litres: number): number => Math.round(litres * 1000);
