import { Qty } from '../../../ui/index.js';
import type { Differences } from './differences-read.js';
import { type TotalRow, totalRows } from './total-rows.js';

/** Both plans beside each other: flight, fuel and handling, and always the whole. */
export const TotalsTable = ({
  differences,
  currency,
  firstDay,
}: {
  readonly differences: Differences;
  readonly currency: string;
  /** What is flown before it is in neither. */
  readonly firstDay: string;
}) => (
  <table className="lines compare-totals">
    <caption>
      Totals, from {firstDay} on
      {differences.laterIdeas.before + differences.laterIdeas.after > 0 && <small>later ideas counted</small>}
    </caption>
    <thead>
      <tr>
        <th scope="col">What</th>
        {['Standing', 'Proposed', 'Difference'].map((head) => (
          <th key={head} scope="col" className="n">
            {head}
          </th>
        ))}
      </tr>
    </thead>
    <tbody>
      {totalRows(differences, currency).map((row) => (
        <tr key={row.name} className={row.isSum ? 'sum' : undefined}>
          <th scope="row">{row.name}</th>
          <td className="n">
            <Amount value={row.before} row={row} />
          </td>
          <td className="n">
            <Amount value={row.after} row={row} />
          </td>
          <td className="n">
            <b>{row.rise === 0 ? 'same' : <Amount value={row.rise} row={row} sign />}</b>
          </td>
        </tr>
      ))}
    </tbody>
  </table>
);

interface AmountProps {
  readonly value: number;
  readonly row: TotalRow;
  readonly sign?: boolean;
}

const Amount = ({ value, row: { unit, digits }, sign = false }: AmountProps) => (
  <Qty value={value} unit={unit} digits={digits} sign={sign} />
);
