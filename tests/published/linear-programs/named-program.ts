import type { LinearProgram } from '@drumline/routing/milp';

/** A linear program written as it is published: rows and columns by name, costs in the row `cost`. */
export interface NamedProgram {
  /** Relation and right side of each row. */
  readonly rows: Readonly<Record<string, readonly [relation: '<=' | '>=' | '=', right: number]>>;
  readonly columns: Readonly<Record<string, Readonly<Record<string, number>>>>;
  /** Upper bounds of columns; else none. */
  readonly upper?: Readonly<Record<string, number>>;
}

export function programOf({ rows, columns, upper }: NamedProgram): LinearProgram {
  const index = new Map(Object.keys(rows).map((name, at) => [name, at]));
  return {
    rows: Object.values(rows).map(([relation, right]) => ({
      lower: relation === '<=' ? Number.NEGATIVE_INFINITY : right,
      upper: relation === '>=' ? Number.POSITIVE_INFINITY : right,
    })),
    columns: Object.entries(columns).map(([name, { cost = 0, ...entries }]) => ({
      cost,
      lower: 0,
      upper: upper?.[name] ?? Number.POSITIVE_INFINITY,
      integer: false,
      rows: Object.keys(entries).map((row) => index.get(row)!),
      coefficients: Object.values(entries),
    })),
  };
}
