import type { ReactNode } from 'react';

export interface Column<Row> {
  readonly head: ReactNode;
  readonly cell: (row: Row) => ReactNode;
  /** Figures stand right, words left. */
  readonly figures?: boolean;
  /** Leaves first where the page is narrow: it must stand somewhere else too. */
  readonly wide?: boolean;
  /** Heads the row for whoever listens. */
  readonly heads?: boolean;
}

interface LinesProps<Row> {
  readonly caption: string;
  readonly rows: readonly Row[];
  readonly columns: readonly Column<Row>[];
  readonly keyOf: (row: Row) => string;
  /** Line numbers, so that two people on the radio can say "line 6". */
  readonly numbered?: boolean;
  /** The caption is said, but stands elsewhere on the page. */
  readonly captionUnseen?: boolean;
  /** Marks the current row. */
  readonly isCurrent?: (row: Row) => boolean;
  /** A sum under a double rule, one cell a column. */
  readonly sum?: readonly ReactNode[];
}

const classOf = ({ figures, wide }: Column<never>): string => `${figures ? 'n' : ''} ${wide ? 'wide' : ''}`;

/** Columns of figures as in an almanac; a heavier rule every five rows. */
export function Lines<Row>(props: LinesProps<Row>) {
  const { caption, rows, columns, keyOf, numbered = false, captionUnseen, isCurrent, sum } = props;
  return (
    <table className="lines">
      <caption className={captionUnseen ? 'unseen' : undefined}>{caption}</caption>
      <thead>
        <tr>
          {numbered && <th className="ln">Line</th>}
          {columns.map((column, at) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: columns have no name but their place
            <th key={at} scope="col" className={classOf(column)}>
              {column.head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map((row, line) => (
          <tr
            key={keyOf(row)}
            className={line % 5 === 4 ? 'fifth' : undefined}
            aria-current={isCurrent?.(row) ? 'true' : undefined}
          >
            {numbered && <td className="ln">{line + 1}</td>}
            {columns.map((column, at) => {
              const Cell = column.heads ? 'th' : 'td';
              return (
                // biome-ignore lint/suspicious/noArrayIndexKey: as above
                <Cell key={at} className={classOf(column)} {...(column.heads ? { scope: 'row' } : {})}>
                  {column.cell(row)}
                </Cell>
              );
            })}
          </tr>
        ))}
      </tbody>
      {sum !== undefined && (
        <tfoot>
          <tr className="sum">
            {numbered && <td />}
            {sum.map((cell, at) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: as above
              <td key={at} className={columns[at] === undefined ? undefined : classOf(columns[at])}>
                {cell}
              </td>
            ))}
          </tr>
        </tfoot>
      )}
    </table>
  );
}
