import type { LinearProgram, RowBounds } from '../milp/linear-program.js';

interface DraftColumn {
  readonly cost: number;
  readonly lower: number;
  readonly upper: number;
  readonly integer: boolean;
  readonly rows: number[];
  readonly coefficients: number[];
}

/** A linear program while it is written. */
export class Draft {
  readonly columns: DraftColumn[] = [];
  readonly rows: RowBounds[] = [];

  /** Index of the new row. */
  row(lower: number, upper: number): number {
    return this.rows.push({ lower, upper }) - 1;
  }

  /** Index of the new column. */
  column(cost: number, lower: number, upper: number): number {
    return this.columns.push({ cost, lower, upper, integer: false, rows: [], coefficients: [] }) - 1;
  }

  enter(column: number, row: number, coefficient: number): void {
    this.columns[column].rows.push(row);
    this.columns[column].coefficients.push(coefficient);
  }

  program(): LinearProgram {
    return { columns: this.columns, rows: this.rows };
  }
}
