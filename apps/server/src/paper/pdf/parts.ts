import type {
  ColumnProperties,
  ContentCanvas,
  ContentColumns,
  ContentStack,
  ContentSvg,
  ContentTable,
  ContentText,
  CustomTableLayout,
  TableCellProperties,
} from 'pdfmake/interfaces.js';
import { bodyWidth } from './paper-size.js';

type Kind = ContentText | ContentColumns | ContentStack | ContentTable | ContentSvg | ContentCanvas;

/** Anything on a page, with what a column or a cell of a table adds to it. */
export type Block = Kind & ColumnProperties & TableCellProperties;

export type Cell = Block | string;

type Style = Omit<Partial<ContentText & TableCellProperties>, 'text'>;

/** A figure: 12 pt at least, at the right of its column. */
export const figure = (text: string, more: Style = {}): Block => ({
  text,
  fontSize: 12,
  bold: true,
  alignment: 'right',
  noWrap: true,
  ...more,
});

export const strong = (text: string, more: Style = {}): Block => ({ text, bold: true, ...more });

/** Head of a column. */
export const head = (text: string, alignment: 'left' | 'right' | 'center' = 'left'): Block => ({
  text,
  bold: true,
  alignment,
});

/** A line to write on, in a sentence: so many signs long. */
export const blank = (signs: number): string => '_'.repeat(signs);

/** A box to tick. */
export const tick = (more: Style = {}): Block => ({
  canvas: [{ type: 'rect', x: 0, y: 0, w: 12, h: 12, lineWidth: 0.9 }],
  ...more,
});

/** A box to tick with its word. */
export const tickWith = (word: string): Block => ({
  columns: [
    { ...tick(), width: 15 },
    { text: word, margin: [0, 0.5, 0, 0] },
  ],
  columnGap: 0,
});

/** A line across; `dash`: to fold or to cut on. */
export const rule = (lineWidth: number, { width = bodyWidth, dash = false } = {}): Block => ({
  canvas: [
    {
      type: 'line',
      x1: 0,
      y1: 0,
      x2: width,
      y2: 0,
      lineWidth,
      ...(dash ? { dash: { length: 4, space: 3 } } : {}),
    },
  ],
});

/** Widths of the rules of a table, in points; 0: none. */
interface Rules {
  /** Above row `at`; the last is under the table. */
  readonly across: (at: number, rows: number) => number;
  /** Left of column `at`; the last is at the right edge. */
  readonly upright?: (at: number, columns: number) => number;
  readonly pad?: readonly [across: number, upright: number];
}

export const ruled = ({ across, upright = () => 0, pad = [3, 2] }: Rules): CustomTableLayout => ({
  hLineWidth: (at, { table }) => across(at, table.body.length),
  vLineWidth: (at, { table }) => upright(at, table.body[0]!.length),
  paddingLeft: () => pad[0],
  paddingRight: () => pad[0],
  paddingTop: () => pad[1],
  paddingBottom: () => pad[1],
});

/** Rules round and between. */
export const grid = (outer: number, inner: number, pad: Rules['pad'] = [3, 2]): CustomTableLayout => {
  const line = (at: number, count: number) => (at === 0 || at === count ? outer : inner);
  return ruled({ across: line, upright: line, pad });
};

/** Something in a frame. */
export const box = (content: Block, lineWidth = 1): Block => ({
  table: { widths: ['*'], body: [[content]] },
  layout: grid(lineWidth, 0, [4, 3]),
});
