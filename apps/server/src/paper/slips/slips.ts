import { beforeDraw, drawChecks } from '@drumline/stock';
import { bodyWidth, type PaperSize, papers } from '../pdf/paper-size.js';
import { type Block, blank, type Cell, grid, head, rule, tick, tickWith } from '../pdf/parts.js';

export type SlipKind = 'count' | 'draw';

/** How many slips are cut from a page. */
export const slipsOnPage = 4;

interface Slips {
  readonly kind: SlipKind;
  /** Four numbers; each stands on its slip twice: at the head, and on the stub that is kept. */
  readonly numbers: readonly string[];
  readonly paper: PaperSize;
  readonly programmes: readonly string[];
}

/** Four slips to a page, to be cut on the dashed lines. */
export const slipsPage = ({ kind, numbers, paper, programmes }: Slips): Block => {
  const { bodyHeight } = papers[paper];
  const slip = (at: number): Cell => {
    const number = numbers[at]!;
    return {
      stack: [
        slipHead(kind === 'count' ? 'Count' : 'Draw', number),
        ...(kind === 'count' ? countFields() : drawFields(programmes)),
        stub(number, stubSpace(kind, bodyHeight > 760)),
      ],
    };
  };
  return {
    table: {
      widths: ['*', '*'],
      heights: bodyHeight / 2 - 10,
      body: [
        [slip(0), slip(1)],
        [slip(2), slip(3)],
      ],
    },
    layout: {
      ...grid(0, 1, [8, 4]),
      hLineStyle: () => ({ dash: { length: 4, space: 3 } }),
      vLineStyle: () => ({ dash: { length: 4, space: 3 } }),
    },
  };
};

/** Above the stub: what the fields of the slip leave free, in points. */
const stubSpace = (kind: SlipKind, isTall: boolean): number =>
  kind === 'count' ? (isTall ? 50 : 28) : isTall ? 30 : 8;

const slipWidth = bodyWidth / 2 - 17;

const slipHead = (title: string, number: string): Block => ({
  stack: [
    {
      columns: [
        { text: title, fontSize: 17, bold: true },
        { text: number, fontSize: 14, bold: true, alignment: 'right', margin: [0, 3, 0, 0] },
      ],
    },
    rule(1.6, { width: slipWidth }),
  ],
});

const line = (text: string, space = 9): Block => ({ text, margin: [0, space, 0, 0] });

/** Cells to write in under their heads. */
const cells = (titles: readonly string[], widths: readonly (number | '*')[], rows: number): Block => ({
  table: {
    widths: [...widths],
    heights: (row: number) => (row === 0 ? 11 : 22),
    body: [titles.map((title) => head(title)), ...Array.from({ length: rows }, () => titles.map(() => ''))],
  },
  layout: grid(1, 0.7, [3, 1.5]),
  margin: [0, 6, 0, 0],
});

const countFields = (): Block[] => [
  line(`Place ${blank(14)} Date ${blank(10)} Time ${blank(9)}`, 12),
  {
    columns: [
      { text: 'Seen', width: 26 },
      { ...tickWith('on the ground'), width: 84 },
      { ...tickWith('from the air'), width: 84 },
    ],
    margin: [0, 8, 0, 0],
  },
  cells(['Sealed', 'Open', 'Empty'], ['*', '*', '*'], 1),
  cells(['Open drum no.', 'stick, cm', 'or L'], [110, 70, '*'], 2),
  line(`Held or X, numbers ${blank(33)}`, 14),
  line(`Damaged, numbers ${blank(30)}`, 14),
  { text: [{ text: 'Write what you see. ', bold: true }, 'Do not copy the book.'], margin: [0, 12, 0, 0] },
  line(`Counted by ${blank(40)}`, 14),
];

const checks = drawChecks.map(({ id }) => `${id[0]!.toUpperCase()}${id.slice(1)}`);

const drawFields = (programmes: readonly string[]): Block[] => [
  line(`Place ${blank(14)} Date ${blank(10)} Time ${blank(9)}`, 10),
  line(`Aircraft ${blank(16)} Pilot ${blank(21)}`),
  {
    columns: [
      { text: 'Programme', width: 52 },
      ...programmes.slice(0, 5).map((code) => ({ ...tickWith(code), width: 38 })),
    ],
    margin: [0, 8, 0, 0],
  },
  {
    columns: [
      { ...tickWith('Medevac'), width: 62 },
      { text: `for whom or what, and where ${blank(11)}`, margin: [0, 0.5, 0, 0] },
    ],
    margin: [0, 8, 0, 0],
  },
  line(blank(47)),
  {
    table: {
      widths: [40, 44, 36, 22, 24, 26, 20],
      heights: (row: number) => (row === 0 ? 11 : 18),
      body: [
        ['Drum', 'Drawn, L', 'Left, L', ...checks].map((title) => head(title)),
        ...Array.from({ length: 3 }, () => ['', '', '', ...checks.map(() => tick())]),
        [head('In all, L'), '', { text: `First ${beforeDraw}`, colSpan: 5 }, '', '', '', ''],
      ],
    },
    layout: grid(1, 0.7, [2, 1.5]),
    margin: [0, 6, 0, 0],
  },
  line(`Engine fuel before ${blank(14)} lb`),
  line(`after ${blank(12)} lb more ${blank(12)} lb`),
  line('Dry: no water found. 1 L is about 1.76 lb at 0.80 kg/L', 4),
  line(`Drum rejected, X, no. ${blank(28)}`),
  line(`Drawn by ${blank(36)}`),
];

const stub = (number: string, space: number): Block => ({
  stack: [
    { ...rule(1, { width: slipWidth, dash: true }), margin: [0, space, 0, 4] },
    { text: [{ text: number, bold: true, fontSize: 13 }, `  typed in by ${blank(13)} at ${blank(10)}`] },
  ],
});
