import type { LoadSheet, SheetLeg } from '@drumline/loading';
import { isValidDate } from '@drumline/units';
import { type Block, blank, box, type Cell, grid, tickWith } from '../pdf/parts.js';
import { dayOfYear } from '../pdf/print-stamp.js';

/** What was decided the evening before, in sentences: what binds, when to go back; with the ways out, or they stand elsewhere. */
export const decided = (leg: SheetLeg, where: 'with ways out' | 'without' = 'with ways out'): Block =>
  sentences([...untilItCloses(leg), ...(where === 'without' ? [] : [waysOutWords(leg)])]);

export const waysOut = (leg: SheetLeg): Block => sentences([waysOutWords(leg)]);

const untilItCloses = ({ binds, goBack }: SheetLeg): readonly string[] => [
  binds,
  ...goBack.lines.slice(0, firstWayOut(goBack)),
];

/** Where to go, where else, and the place that a reader of the map would take and may not, in one row. */
const waysOutWords = ({ goBack }: SheetLeg): string =>
  [...goBack.lines.slice(firstWayOut(goBack)), goBack.notToUse].filter(Boolean).join(' ');

const firstWayOut = ({ lines }: SheetLeg['goBack']): number =>
  lines.findIndex((line) => line.startsWith('If ') && line.includes(' closes '));

const sentences = (lines: readonly string[]): Block => ({
  table: { widths: ['*'], body: lines.map((line): Cell[] => [leadIn(line)]) },
  layout: grid(1.4, 0.5, [4, 0.8]),
  margin: [0, 3, 0, 0],
});

/** What no book knows, how the drums are tied, under which approval passengers fly beside them, and what the loader looks at himself. */
export const acrossThePage = (
  { tieDown, notInBookWords }: LoadSheet,
  { passengersAndDrums }: SheetLeg,
): Block => {
  const lines = [
    ...(notInBookWords === null ? [] : [`Not in the book: ${notInBookWords}`]),
    ...(tieDown === null ? [] : [`${tieDown.brief} ${tieDown.caution}`]),
    ...(passengersAndDrums.words === null ? [] : [passengersAndDrums.words]),
  ];
  return {
    table: { widths: ['*'], body: [...lines.map((line): Cell[] => [leadIn(line)]), [looked()]] },
    layout: grid(1, 0.5, [4, 1]),
    margin: [0, 0, 0, 3],
  };
};

const looked = (): Block => ({
  columns: [
    { stack: [tickWith('none leaking or bent')], width: 120 },
    { stack: [tickWith('no other dangerous goods')], width: 140 },
    { text: `Home: ${blank(5)} empties, still UN 1863`, width: '*' },
  ],
  columnGap: 12,
  margin: [0, 1, 0, 1],
});

/** The words before the first colon, or up to "if" and what follows it, in bold. */
const leadIn = (line: string): Block => {
  const at = /: /.exec(line)?.index ?? /\. /.exec(line)?.index ?? line.length;
  return { text: [{ text: line.slice(0, at + 1), bold: true }, line.slice(at + 1)] };
};

/** A date as it is said on the rest of the page. */
const inWords = (value: string): string => (isValidDate(value) ? dayOfYear(value) : value);

/** Signs of a field that takes half the width of its box. */
const halfWidth = 18;

/** A line for each field in the operator's order; two short ones that follow each other share it. */
const fieldRows = (particulars: SheetLeg['particulars']): readonly (readonly Block[])[] => {
  const rows: Block[][] = [];
  let hasRoom = false;
  for (const { label, value } of particulars) {
    const said = value === null ? blank(12) : inWords(value);
    const field: Block = { text: [{ text: `${label} `, bold: true }, said] };
    const isShort = label.length + said.length < halfWidth;
    if (hasRoom && isShort) rows.at(-1)!.push(field);
    else rows.push([field]);
    hasRoom = isShort && !(hasRoom && isShort);
  }
  return rows;
};

/** The particulars of the goods on a leg, in the operator's words and order. */
export const dangerousGoods = (
  { particularsMissing }: Pick<LoadSheet, 'particularsMissing'>,
  { particulars }: Pick<SheetLeg, 'particulars'>,
  lineGap = 0,
): Block =>
  box({
    stack: [
      { text: 'Dangerous goods aboard', bold: true, fontSize: 11 },
      ...(particulars.length === 0
        ? ['None by the book.']
        : fieldRows(particulars).map((row): Block => ({ columns: [...row], margin: [0, lineGap, 0, 0] }))),
      ...(particulars.length === 0 || particularsMissing === null ? [] : [particularsMissing]),
    ],
  });
