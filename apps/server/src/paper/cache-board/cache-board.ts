import { beforeDraw, drawChecks } from '@drumline/stock';
import { type Litres, print } from '@drumline/units';
import { type Block, blank, box, type Cell, grid, rule } from '../pdf/parts.js';
import type { PrintStamp } from '../pdf/print-stamp.js';

/** What the board of a cache says, in the order in which drums are used. */
export interface CacheBoard {
  readonly place: string;
  readonly name: string;
  readonly radioTime: string | null;
  readonly inOrder: readonly { readonly number: string; readonly litres: Litres }[];
  readonly held: readonly string[];
  readonly usableLitres: Litres;
  readonly bookLitres: Litres;
  readonly drums: number;
  /** "1,200 L on 12 June 2027"; null: never counted. */
  readonly lastCount: string | null;
  readonly empties: number;
  /** Null: no levels are set for the place. */
  readonly levels: {
    readonly word: string;
    readonly minimumLitres: Litres;
    readonly criticalLitres: Litres;
    readonly reserveLitres: Litres;
  } | null;
}

/** Drums that the board has lines for; the rest stands below them by number. */
const mostLines = 8;

/** One page to pin up, read at three metres. */
export const cacheBoardPage = (board: CacheBoard, stamp: PrintStamp): Block => {
  const shown = board.inOrder.slice(0, mostLines);
  const more = board.inOrder.length - shown.length;
  return {
    stack: [
      boardHead(board, stamp),
      {
        text: shown.length === 0 ? 'Nothing here to open.' : 'Open in this order',
        fontSize: 24,
        bold: true,
        margin: [0, 8, 0, 4],
      },
      ...(shown.length === 0 ? [] : [orderTable(shown)]),
      ...(more === 0
        ? []
        : [
            {
              text: `Then ${board.inOrder
                .slice(mostLines)
                .map(({ number }) => number)
                .join(', ')}.`,
              fontSize: more > 40 ? 12 : 14,
              bold: true,
              margin: [0, 2, 0, 0],
            } as Block,
          ]),
      ...(board.held.length === 0 ? [] : [heldBox(board.held)]),
      levelBoxes(board),
      ...boardRules(board).map((text): Block => ({ text, fontSize: 17, bold: true, margin: [0, 5, 0, 0] })),
      {
        text: `By the book now ${print(board.bookLitres, 'L')} in ${board.drums} ${board.drums === 1 ? 'drum' : 'drums'}. ${board.lastCount === null ? 'Never counted' : `Somebody last counted ${board.lastCount}`}. Counted since ${blank(12)} by ${blank(14)}. A later print replaces this one.`,
        margin: [0, 16, 0, 0],
      },
    ],
  };
};

const boardHead = ({ place, name }: CacheBoard, stamp: PrintStamp): Block => ({
  stack: [
    {
      columns: [
        { text: place, fontSize: 44, bold: true, width: 'auto' },
        {
          stack: [{ text: name, fontSize: 24, bold: true }, { text: `Printed ${stamp.at} by ${stamp.by}` }],
          alignment: 'right',
        },
      ],
    },
    rule(2.4),
  ],
});

const orderTable = (drums: CacheBoard['inOrder']): Block => ({
  table: {
    widths: [24, 130, 80, '*'],
    body: drums.map(({ number, litres }, at): Cell[] => [
      { text: `${at + 1}`, fontSize: 22, bold: true, margin: [0, 10, 0, 0] },
      { text: number, fontSize: 34, bold: true },
      { text: print(litres, 'L'), fontSize: 16, bold: true, margin: [0, 16, 0, 0] },
      { text: `opened ${blank(14)} left ${blank(9)} L`, fontSize: 14, margin: [0, 18, 0, 0] },
    ]),
  },
  layout: grid(0, 0, [0, 0]),
});

const heldBox = (numbers: readonly string[]): Block => ({
  ...box(
    {
      stack: [
        { text: '− HOLD −   Do not open. Do not move.', fontSize: 20, bold: true },
        { text: numbers.join('  '), fontSize: 22, bold: true, decoration: 'lineThrough' },
      ],
    },
    3,
  ),
  margin: [0, 8, 0, 0],
});

const levelBoxes = ({ usableLitres, levels }: CacheBoard): Block => {
  const level = (title: string, litres: Litres, words: string): Cell => ({
    stack: [
      { text: title, bold: true, fontSize: 12 },
      { text: print(litres, 'L'), bold: true, fontSize: 24 },
      { text: words, fontSize: 12 },
    ],
  });
  const boxes =
    levels === null
      ? [level('Usable', usableLitres, 'no levels are set')]
      : [
          level('Usable', usableLitres, levels.word),
          level('Minimum', levels.minimumLitres, `critical ${print(levels.criticalLitres, 'L')}`),
          level('Reserve', levels.reserveLitres, 'medevac only'),
        ];
  return {
    table: { widths: boxes.map(() => '*'), body: [boxes] },
    layout: grid(1.4, 1.4, [8, 4]),
    margin: [0, 10, 0, 6],
  };
};

const boardRules = ({ empties, radioTime }: CacheBoard): readonly string[] => [
  'One open drum at a time. Finish it first.',
  `Before you pump: ${beforeDraw}. Then look at ${drawChecks.map(({ said }) => said).join(', ')}.`,
  `Empties: bungs closed, stand apart. ${empties} here by the book.`,
  `Write a draw slip. Then tell base${radioTime === null ? '' : ` at ${radioTime}`}.`,
];
