import type { AnyPart } from '../pdf/any-part.js';
import type { Block } from '../pdf/parts.js';

/** Least size of a figure on a load sheet, in points: whoever loads and flies by it reads it folded, wet or copied twice. */
const figureSize = 12;

/** The same block with every figure in a sentence at 12 pt or more; the words round it keep their size. */
export const largeFigures = (block: Block): Block => enlarge(block, 0) as Block;

function enlarge(part: unknown, around: number): unknown {
  if (typeof part === 'string') return around < figureSize && /\d/.test(part) ? { text: runsOf(part) } : part;
  if (Array.isArray(part)) return part.map((each) => enlarge(each, around));
  const { text, stack, columns, table, fontSize = around } = part as AnyPart;
  return {
    ...(part as object),
    ...(text === undefined ? {} : { text: textOf(text, fontSize) }),
    ...(stack === undefined ? {} : { stack: enlarge(stack, fontSize) }),
    ...(columns === undefined ? {} : { columns: enlarge(columns, fontSize) }),
    ...(table === undefined ? {} : { table: { ...table, body: enlarge(table.body, fontSize) } }),
  };
}

/** Runs of a sentence carry their own style: the maker of the PDF hands none down inside a sentence. */
const textOf = (text: unknown, size: number): unknown => {
  if (Array.isArray(text)) return text.flatMap((run: unknown) => textOf(run, size));
  if (typeof text === 'string') return size < figureSize && /\d/.test(text) ? runsOf(text) : text;
  const { text: words, fontSize = size } = text as AnyPart;
  return typeof words === 'string' && fontSize < figureSize && /\d/.test(words)
    ? runsOf(words).map((run) => ({ ...(text as object), ...run }))
    : text;
};

interface Run {
  readonly text: string;
  readonly fontSize?: number;
  readonly lineHeight?: number;
}

/** Words and figures in turn; a figure is all that stands together with a digit: "8,131", "−11", "J27-012", "17:21". */
const runsOf = (text: string): readonly Run[] =>
  text
    .split(/(\S*\d\S*)/)
    .filter((run) => run !== '')
    // Closer lines than the words have, so that a figure moves no line apart.
    .map((run) => (/\d/.test(run) ? { text: run, fontSize: figureSize, lineHeight: 0.78 } : { text: run }));
