import { figure, inWords } from '../../../ui/index.js';
import type { Planned, Today } from './card-read.js';
import { perLitre } from './card-words.js';

interface CardCostProps {
  readonly load: { readonly drums: number; readonly cost: Planned['cost'] };
  readonly fewer: Today['fewer'];
  readonly currency: string;
}

/** Fuel, flight and handling a litre, as planned and with the drums that may go. */
export const CardCost = ({ load, fewer, currency }: CardCostProps) => {
  const loads = fewer === null || fewer.drums === 0 ? [load] : [load, fewer];
  const rows = [
    ['Fuel', loads.map(({ cost }) => cost.fuel)],
    [
      `Flight, ${figure(Math.round(load.cost.flight / 100))} ${currency}`,
      loads.map(({ cost }) => cost.flight),
    ],
    ['Handling', loads.map(({ cost }) => cost.handling)],
  ] as const;
  return (
    <table className="card-table">
      <thead>
        <tr>
          <td />
          {loads.map(({ drums }) => (
            <th key={drums} scope="col" className="n">
              {inWords(drums, 'drums')}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(([name, costs]) => (
          <tr key={name}>
            <th scope="row">{name}</th>
            {costs.map((cents, index) => (
              <td key={loads[index]!.drums} className="n">
                {perLitre(cents, loads[index]!.cost.litres, currency)}
              </td>
            ))}
          </tr>
        ))}
        <tr className="sum">
          <th scope="row">
            <b>Delivered</b>
          </th>
          {loads.map(({ drums, cost }) => (
            <td key={drums} className="n">
              <b>{perLitre(cost.flight + cost.fuel + cost.handling, cost.litres, currency)}</b>
            </td>
          ))}
        </tr>
      </tbody>
    </table>
  );
};
