import type { LoadSheet, SheetLeg } from '@drumline/loading';
import { type Block, blank, box, type Cell, grid, tickWith } from './parts.js';

/** What was decided the evening before, in sentences: what binds, when to go back, how it is tied. */
export const decided = (sheet: LoadSheet, leg: number): Block => {
  const { binds, goBack } = sheet.legs[leg]!;
  const lines = [binds, ...goBack.lines, tieDownWords(sheet)];
  return {
    table: { widths: ['*'], body: lines.map((line): Cell[] => [leadIn(line)]) },
    layout: grid(1.4, 0.5, [4, 1]),
    margin: [0, 4, 0, 0],
  };
};

const tieDownWords = ({ tieDown }: LoadSheet): string =>
  tieDown === null
    ? 'Tie-down: by the approved loading manual; no straps are counted here.'
    : `${tieDown.words} ${tieDown.caution}`;

/** The words before the first colon, or up to "if" and what follows it, in bold. */
const leadIn = (line: string): Block => {
  const at = /: /.exec(line)?.index ?? /\. /.exec(line)?.index ?? line.length;
  return { text: [{ text: line.slice(0, at + 1), bold: true }, line.slice(at + 1)] };
};

/** The particulars of the goods on a leg, in the operator's words and order. */
export const dangerousGoods = ({ particulars, passengersAndDrums }: SheetLeg): Block =>
  box({
    stack: [
      { text: 'Dangerous goods aboard', bold: true, fontSize: 11 },
      ...(particulars.length === 0
        ? ['None by the book.']
        : [
            {
              text: particulars.flatMap(({ label, value }) => [
                { text: `${label} `, bold: true },
                `${value ?? blank(12)}; `,
              ]),
            },
          ]),
      ...(passengersAndDrums.words === null ? [] : [{ text: passengersAndDrums.words, bold: true }]),
      { ...tickWith('none leaking or bent'), margin: [0, 3, 0, 0] },
      { ...tickWith('no other dangerous goods'), margin: [0, 3, 0, 0] },
      { text: `Emergency phone ${blank(14)}`, margin: [0, 4, 0, 0] },
      { text: `Home: ${blank(5)} empties, still UN 1863`, margin: [0, 2, 0, 0] },
    ],
  });
