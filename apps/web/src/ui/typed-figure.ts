const plain = /^-?\d*\.?\d+$/;
const inThousands = /^-?\d{1,3}(,\d{3})+(\.\d+)?$/;

/**
 * A typed figure: "180.5", "1,200". A comma parts thousands and nothing else, so that "180,5" is no figure and never
 * 1,805. Null: nothing is typed, or no figure.
 */
export const figureIn = (typed: string): number | null => {
  const text = typed.trim().replace('−', '-');
  return plain.test(text) || inThousands.test(text) ? Number(text.replaceAll(',', '')) : null;
};
