/** A typed figure: "180.5", "1,200". Null: nothing is typed, or no figure. */
export const figureIn = (typed: string): number | null => {
  const plain = typed.trim().replaceAll(',', '').replace('−', '-');
  return /^-?\d+(\.\d+)?$/.test(plain) ? Number(plain) : null;
};

/** A whole number from zero up, as drums are counted. */
export const countIn = (typed: string): number | null => {
  const figure = figureIn(typed);
  return figure !== null && Number.isInteger(figure) && figure >= 0 ? figure : null;
};

/** Litres as the ledger keeps them. */
export const millilitresIn = (litres: number): number => Math.round(litres * 1000);
