import { printNumber } from '@drumline/units';
import type { Compared, TypedTotals } from './two-totals.js';

interface ComparedFiguresProps {
  readonly compared: Compared;
  readonly typed: TypedTotals;
  /** Rows of the column that was added by hand. */
  readonly rows: number;
}

export const ComparedFigures = ({ compared, typed, rows }: ComparedFiguresProps) => (
  <table className="cmp">
    <thead>
      <tr>
        <td />
        <th className="r" scope="col">
          Load, {rows}
        </th>
        <th className="r" scope="col">
          Take-off weight
        </th>
      </tr>
    </thead>
    <tbody>
      <Row of="By the sheet" load={compared.loadLb} takeoff={compared.takeoffLb} />
      <Row of="By hand" load={typed.byHandLb} takeoff={null} />
      <Row of="By the aircraft" load={null} takeoff={typed.byAircraftLb} />
      <Row of="Difference" load={compared.load.differenceLb} takeoff={compared.takeoff.differenceLb} />
    </tbody>
  </table>
);

const Row = ({ of, load, takeoff }: { of: string; load: number | null; takeoff: number | null }) => (
  <tr className={of === 'Difference' ? 'diff' : ''}>
    <th scope="row">{of}</th>
    <Figure lb={load} />
    <Figure lb={takeoff} />
  </tr>
);

const Figure = ({ lb }: { readonly lb: number | null }) => (
  <td className="f">
    {lb === null ? (
      <span className="vis-hide">not asked</span>
    ) : (
      <>
        {printNumber(lb)}
        <small>lb</small>
      </>
    )}
  </td>
);
