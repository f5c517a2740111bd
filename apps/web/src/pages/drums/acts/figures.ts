/** A typed figure: "180.5", "1,200". Null: nothing is typed, or no figure. */
export const figureIn = (typed: string): number | null => {
  const plain = typed.trim().replaceAll(',', '').replace('−', '-');
  return /^-?\d+(\.\d+)?$/.test(plain) ? Number(plain) : null;
};

/** Litres as the ledger keeps them. */
export const millilitresIn = (litres: number): number => Math.round(litres * 1000);
