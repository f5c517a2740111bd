import type { FieldFault } from '../../../api/index.js';
import { Lines } from '../../../ui/index.js';
import { remedyAt, whereOf } from './where.js';

interface FaultTableProps {
  readonly caption: string;
  readonly faults: readonly FieldFault[];
  /** What the page calls a cell; the name that the file has for it stands below. Absent: the file's own alone. */
  readonly wordsOf?: (cell: string) => string;
}

/** Line, cell, what it says and what is wrong with it, and what would do. */
export const FaultTable = ({ caption, faults, wordsOf }: FaultTableProps) =>
  faults.length === 0 ? null : (
    <Lines
      caption={caption}
      rows={faults}
      keyOf={({ path, problem }) => path + problem}
      columns={[
        { head: 'Line', heads: true, cell: ({ path }) => whereOf(path).line },
        { head: 'Cell', cell: ({ path }) => <Cell name={whereOf(path).cell} wordsOf={wordsOf} /> },
        { head: 'What it says, what is wrong', cell: ({ problem }) => problem },
        { head: 'What would do', cell: (fault) => remedyAt(faults, faults.indexOf(fault)) },
      ]}
    />
  );

interface CellProps {
  readonly name: string;
  readonly wordsOf: FaultTableProps['wordsOf'];
}

const Cell = ({ name, wordsOf }: CellProps) => {
  if (wordsOf === undefined || name === '') return name;
  const words = wordsOf(name);
  return words.toLowerCase() === name.toLowerCase() ? (
    words
  ) : (
    <>
      {words} <small>(in the file: {name})</small>
    </>
  );
};
