import { type DipReading, type DipTable, litresAtDip, mostDipCm } from '@drumline/stock';
import { centimetres, type Litres, litres, print } from '@drumline/units';
import { figure } from '../words.js';

/** Undefined: no figure yet; null: the drum is not that deep. */
export const dipOf = (table: DipTable, typed: string): DipReading | null | undefined => {
  const cm = figure(typed);
  return cm === null ? undefined : litresAtDip(table, centimetres(cm));
};

/** "= 87 L, ± 1.3 L by the marks of the stick". */
export const dipWords = (table: DipTable, typed: string): string => {
  const read = dipOf(table, typed);
  if (read === undefined) return '';
  if (read === null) return `no ${table.name} is deeper than ${print(mostDipCm(table), 'cm', 1)}`;
  return `= ${print(read.litres, 'L')}, ± ${print(read.errorLitres, 'L', 1)} by the marks of the stick`;
};

/** What somebody has found in the open drums: litres of all of them, or the stick in each. */
export interface OpenDrumsDraft {
  readonly open: number;
  readonly openLitres: string;
  /** Name of the table by which the sticks are read; absent: litres are written. */
  readonly dipTable?: string | null;
  /** Centimetres, drum by drum. */
  readonly dips?: readonly string[];
}

export interface FoundInOpen {
  /** Null: a figure is still missing. */
  readonly litres: Litres | null;
  /** What was read off the stick; absent: nothing. */
  readonly words?: string;
}

export const tableOf = (
  { dipTable = null }: Pick<OpenDrumsDraft, 'dipTable'>,
  tables: readonly DipTable[],
): DipTable | null => tables.find(({ name }) => name === dipTable) ?? null;

export const foundInOpen = (draft: OpenDrumsDraft, tables: readonly DipTable[]): FoundInOpen => {
  const table = tableOf(draft, tables);
  if (table === null) {
    const typed = figure(draft.openLitres);
    return { litres: typed === null ? null : litres(typed) };
  }
  const sticks = sticksOf(draft);
  const read = sticks.flatMap((cm) => dipOf(table, cm) ?? []);
  if (read.length < draft.open) return { litres: null };
  return {
    litres: litres(Math.round(read.reduce((sum, each) => sum + each.litres, 0))),
    words: `By stick, ${table.name}: ${sticks.map((cm) => `${cm} cm`).join(', ')}.`,
  };
};

/** One box a drum, however many were typed before. */
export const sticksOf = ({ open, dips = [] }: OpenDrumsDraft): readonly string[] =>
  Array.from({ length: open }, (_, drum) => dips[drum] ?? '');
