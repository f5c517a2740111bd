import type { Calendar } from '../../../api/index.js';
import { Lock } from '../../../ui/index.js';
import type { Week } from '../week-read.js';
import { markKey } from './box-words.js';
import { outKey } from './out-words.js';

const lines = [
  ['offered', 'Offered'],
  ['approved', 'Approved'],
  ['given', 'Given'],
  ['away', 'Loaded, Away'],
  ['flown', 'Flown'],
  ['booked', 'Booked, not fuel'],
] as const;

interface LegendProps {
  readonly week: Week;
  readonly calendar: Calendar;
}

export const Legend = ({ week, calendar }: LegendProps) => (
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
    <span>4 of 5 drums, limit as planned</span>
    <span className="of-marks">{markKey(week.flights).join(', ')}</span>
    <OutKey reasons={outKey(week, calendar.day)} />
    <span className="roomy">Dotted line: noon</span>
  </p>
);

const OutKey = ({ reasons }: { readonly reasons: readonly string[] }) =>
  reasons.length === 0 ? null : (
    <span className="of-out" aria-hidden="true">
      Out: {reasons.join(', ')}
    </span>
  );
