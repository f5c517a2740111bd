import { Lock } from '../../../ui/index.js';
import type { WeekFlight } from '../week-read.js';
import { markKey } from './box-words.js';

const lines = [
  ['offered', 'Offered'],
  ['approved', 'Approved'],
  ['given', 'Given'],
  ['away', 'Loaded, Away'],
  ['flown', 'Flown'],
  ['booked', 'Booked, not fuel'],
] as const;

export const Legend = ({ flights }: { readonly flights: readonly WeekFlight[] }) => (
  <p className="week-legend">
    {lines.map(([line, words]) => (
      <span key={line}>
        <i className={`flight-box ${line}`} aria-hidden="true" /> {words}
      </span>
    ))}
    <span>
      <Lock />
      Frozen<span className="roomy">: a re-plan leaves it alone</span>
    </span>
    <span>4 of 5 drums, what binds</span>
    <span className="of-marks">{markKey(flights).join(', ')}</span>
    <span className="roomy">Dotted line: noon</span>
  </p>
);
