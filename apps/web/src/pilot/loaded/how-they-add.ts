import type { LoadSheet } from '@drumline/loading';
import { printedLbOf } from '@drumline/loading';
import { type Pounds, pounds, printNumber } from '@drumline/units';
import type { TypedTotals } from './two-totals.js';

/** One line of a sum that can be followed by finger. */
export interface AddingLine {
  readonly label: string;
  readonly lb: Pounds;
  readonly sign: '' | '+' | '-' | '=';
  /** What stands under the line so far. */
  readonly soFarLb: Pounds;
}

export interface AddingUp {
  readonly of: 'Load' | 'Take-off weight';
  readonly lines: readonly AddingLine[];
  /** "2,378 lb by the sheet, 2,387 lb by hand. 2,387 − 2,378 = 9 lb." */
  readonly difference: string;
}

/** How each of the two totals comes about on the sheet, and the difference to what was typed; no word says which is right. */
export const howTheyAdd = (sheet: LoadSheet, typed: TypedTotals): readonly AddingUp[] => {
  const { totals } = sheet.legs[0]!;
  return [
    {
      of: 'Load',
      lines: addedUp(
        totals.items.map(({ name, kg }) => ({ label: name, lb: printedLbOf(kg), sign: '+' as const })),
      ),
      difference: differenceWords(totals.loadLb, typed.byHandLb, 'by hand'),
    },
    {
      of: 'Take-off weight',
      lines: takeoffLines(sheet),
      difference: differenceWords(totals.takeoffLb, typed.byAircraftLb, 'by the aircraft'),
    },
  ];
};

const addedUp = (lines: readonly Omit<AddingLine, 'soFarLb'>[]): readonly AddingLine[] => {
  let soFar = 0;
  return lines.map((line, at) => {
    if (line.sign !== '=') soFar += line.sign === '-' ? -line.lb : line.lb;
    return { ...line, sign: at === 0 ? '' : line.sign, soFarLb: pounds(soFar) };
  });
};

/** From the operating weight down to the take-off, as the sheet prints it. */
const takeoffLines = ({ legs }: LoadSheet): readonly AddingLine[] => {
  const { rows } = legs[0]!;
  const end = rows.findIndex(({ kind, label }) => kind === 'sum' && label.startsWith('take-off '));
  const signs = { start: '', plus: '+', minus: '-', sum: '=', again: '=' } as const;
  return addedUp(rows.slice(0, end + 1).map(({ label, lb, kind }) => ({ label, lb, sign: signs[kind] })));
};

const differenceWords = (bySheetLb: number, typedLb: number, by: string): string => {
  const [more, less] = [Math.max(bySheetLb, typedLb), Math.min(bySheetLb, typedLb)];
  const figures = `${printNumber(bySheetLb)} lb by the sheet, ${printNumber(typedLb)} lb ${by}.`;
  return `${figures} ${printNumber(more)} − ${printNumber(less)} = ${printNumber(more - less)} lb.`;
};
