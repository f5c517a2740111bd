import { type KeyboardEvent, useId } from 'react';
import {
  cellDoubt,
  cellsOf,
  columnOf,
  columns,
  heads,
  type LimitCells,
  type LimitColumn,
  type LimitRow,
} from './limit-cells.js';
import { type DrumsFrom, drumWords, type LimitFault } from './payload-read.js';

interface LimitTableProps {
  readonly rows: readonly LimitRow[];
  readonly draft: Readonly<Record<string, LimitCells>>;
  /** What waits for a second person, by id. */
  readonly proposed: Readonly<Record<string, LimitCells>>;
  readonly faults: readonly LimitFault[];
  readonly base: string;
  readonly drums: readonly DrumsFrom[];
  readonly mayDraft: boolean;
  readonly onType: (row: LimitRow, column: LimitColumn, text: string) => void;
}

/** The whole table on one page: limits, and beside them the drums that come of them. Up and Down move by line. */
export const LimitTable = (props: LimitTableProps) => (
  <table className="lines set-up-limits">
    <caption className="unseen">Strip limits by type</caption>
    <thead>
      <tr>
        <th scope="col">Strip</th>
        <th scope="col">Type</th>
        {columns.map((column) => (
          <th key={column} scope="col" className="n">
            {heads[column]}
          </th>
        ))}
        <th scope="col">Drums from {props.base}: dry, soft</th>
      </tr>
    </thead>
    <tbody>
      {props.rows.map((row, at) => (
        <Row key={row.id} {...props} row={row} isFirst={props.rows[at - 1]?.place !== row.place} />
      ))}
    </tbody>
  </table>
);

const Row = ({
  row,
  isFirst,
  draft,
  proposed,
  faults,
  drums,
  mayDraft,
  onType,
}: LimitTableProps & { row: LimitRow; isFirst: boolean }) => {
  const kept = cellsOf(row.line?.data);
  const typed = draft[row.id] ?? kept;
  const wrong = faults.filter(({ id }) => id === row.id);
  const carried = drums.find(({ strip, type }) => strip === row.place && type === row.type);
  return (
    <tr className={isFirst ? 'first' : undefined}>
      <th scope="row">{isFirst ? row.place : <span className="unseen">{row.place}</span>}</th>
      <td>{row.type}</td>
      {columns.map((column) => (
        <Cell
          key={column}
          label={`${row.place} ${row.type}, ${heads[column]}`}
          kept={kept[column]}
          typed={typed[column]}
          proposed={proposed[row.id]?.[column]}
          doubt={cellDoubt(row, column, typed[column])}
          isWrong={wrong.some(({ path }) => (columnOf(path) ?? column) === column)}
          mayDraft={mayDraft}
          onType={(text) => onType(row, column, text)}
        />
      ))}
      <td>
        {carried !== undefined ? drumWords(carried) : row.line === null ? <small>not approved</small> : ''}
      </td>
    </tr>
  );
};

interface CellProps {
  readonly label: string;
  readonly kept: string;
  readonly typed: string;
  readonly proposed: string | undefined;
  /** What is asked about the figure; it is kept. */
  readonly doubt: string | null;
  readonly isWrong: boolean;
  readonly mayDraft: boolean;
  readonly onType: (text: string) => void;
}

const Cell = ({ label, kept, typed, proposed, doubt, isWrong, mayDraft, onType }: CellProps) => {
  const said = useId();
  const isChanged = typed !== kept;
  const waits = proposed !== undefined && proposed !== kept && !isChanged;
  return (
    <td className={`n ${isWrong ? 'wrong' : isChanged || waits ? 'changed' : ''}`}>
      {isWrong && <small className="plum">fault</small>}
      {isChanged && kept !== '' && <span className="was">{kept}</span>}
      <span id={said} aria-live="polite">
        {isChanged && doubt !== null && <b className="doubt">{doubt} </b>}
      </span>
      {waits && <b>{proposed === '' ? 'none' : proposed}, waits </b>}
      {mayDraft ? (
        <input
          aria-label={label}
          aria-invalid={isWrong || undefined}
          aria-describedby={isChanged && doubt !== null ? said : undefined}
          value={typed}
          onChange={(event) => onType(event.target.value)}
          onKeyDown={(event) => moveOrRestore(event, () => onType(kept))}
          autoComplete="off"
          size={6}
        />
      ) : (
        kept
      )}
    </td>
  );
};

/** Up and Down to the same column of the next line, Esc leaves the figure that is in force. */
const moveOrRestore = (event: KeyboardEvent<HTMLInputElement>, restore: () => void): void => {
  if (event.key === 'Escape') restore();
  if (event.key !== 'ArrowUp' && event.key !== 'ArrowDown') return;
  event.preventDefault();
  const cell = event.currentTarget.closest('td')!;
  const line = cell.parentElement![event.key === 'ArrowUp' ? 'previousElementSibling' : 'nextElementSibling'];
  line?.children[cell.cellIndex]?.querySelector('input')?.focus();
};
