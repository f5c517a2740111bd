import { stringify } from 'csv-stringify/sync';
import type { Cell, CsvKind } from './csv-kind.js';

/** A file that `readCsv` reads back. A cell that a spreadsheet would take for a formula is made harmless. */
export const writeCsv = (kind: CsvKind, lines: readonly Readonly<Record<string, Cell>>[]): string =>
  stringify([...lines], {
    header: true,
    columns: kind.columns.map(({ heading }) => heading),
    escape_formulas: true,
  });
