import type { AnyPart } from '../pdf/any-part.js';
import type { Block, Cell } from '../pdf/parts.js';

export interface PrintedText {
  readonly text: string;
  /** In points. */
  readonly size: number;
}

/** Every text of a block in the order in which it is printed. */
export const printedTexts = (block: Cell | readonly Cell[], size = 10): readonly PrintedText[] => {
  if (typeof block === 'string') return block === '' ? [] : [{ text: block, size }];
  if (Array.isArray(block)) return block.flatMap((each: Cell) => printedTexts(each, size));
  const { text, stack = [], columns = [], table, fontSize = size } = block as AnyPart;
  const own = text === undefined ? [] : printedTexts(text as Cell, fontSize);
  const inside = [...stack, ...columns, ...(table?.body.flat() ?? [])];
  return [...own, ...inside.flatMap((each) => printedTexts(each, fontSize))];
};

/** The cells of a table as printed, row by row. */
export const printedRows = (block: Block): readonly (readonly string[])[] =>
  ((block as AnyPart).table?.body ?? []).map((row) =>
    row.map((cell) =>
      printedTexts(cell)
        .map(({ text }) => text)
        .join(''),
    ),
  );

/** "8,528" or "−531", as a person reads it. */
export const readFigure = (text: string): number => Number(text.replaceAll(',', '').replace('−', '-'));
