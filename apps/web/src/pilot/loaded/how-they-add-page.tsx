import './compare.css';
import { printNumber } from '@drumline/units';
import { Page, Press } from '../../phone/index.js';
import type { OpenedFlight } from '../day/opened-flight.js';
import { type AddingUp, howTheyAdd } from './how-they-add.js';
import { aboveLoaded } from './loaded-steps.js';
import type { TypedTotals } from './two-totals.js';

interface HowTheyAddProps {
  readonly flight: OpenedFlight;
  readonly typed: TypedTotals;
  readonly onBack: () => void;
}

/** Line by line, with what stands under each: where two sums part can be found by finger. */
export const HowTheyAdd = ({ flight, typed, onBack }: HowTheyAddProps) => (
  <Page
    above={aboveLoaded(flight)}
    title="How they add"
    acts={<Press onPress={onBack}>Back to compare</Press>}
  >
    {howTheyAdd(flight.sheet!, typed).map((sum) => (
      <Sum key={sum.of} sum={sum} />
    ))}
    <p className="foot">This is how the sheet adds. It does not say which figure is right.</p>
  </Page>
);

const Sum = ({ sum: { of, lines, difference } }: { readonly sum: AddingUp }) => (
  <>
    <table className="cmp adds" aria-label={of}>
      <thead>
        <tr>
          <th scope="col">{of}</th>
          <th className="r" scope="col">
            lb
          </th>
          <th className="r" scope="col">
            so far, lb
          </th>
        </tr>
      </thead>
      <tbody>
        {lines.map(({ label, lb, sign, soFarLb }) => (
          <tr key={label} className={sign === '=' ? 'diff' : ''}>
            <th scope="row">{label}</th>
            <td className="f">
              {sign} {printNumber(lb)}
            </td>
            <td className="f">{printNumber(soFarLb)}</td>
          </tr>
        ))}
      </tbody>
    </table>
    <p className="said">
      <b>{difference}</b>
    </p>
  </>
);
