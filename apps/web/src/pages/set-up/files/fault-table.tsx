import type { FieldFault } from '../../../api/index.js';
import { Lines } from '../../../ui/index.js';
import { whereOf } from './where.js';

interface FaultTableProps {
  readonly caption: string;
  readonly faults: readonly FieldFault[];
}

/** Line, cell, what it says and what is wrong with it, and what would do. */
export const FaultTable = ({ caption, faults }: FaultTableProps) =>
  faults.length === 0 ? null : (
    <Lines
      caption={caption}
      rows={faults}
      keyOf={({ path, problem }) => path + problem}
      columns={[
        { head: 'Line', heads: true, cell: ({ path }) => whereOf(path).line },
        { head: 'Cell', cell: ({ path }) => whereOf(path).cell },
        { head: 'What it says, what is wrong', cell: ({ problem }) => problem },
        { head: 'What would do', cell: ({ remedy }) => remedy },
      ]}
    />
  );
