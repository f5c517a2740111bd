import { useCalendar } from '../../api/index.js';
import type { Batch, Drum } from './drums-read.js';
import { PrintSheet } from './print-sheet.js';

/** The tag on a drum: its number 20 mm high, what it is, and lines for whoever opens it. */
export const Tag = ({ drum, batch }: { readonly drum: Drum; readonly batch: Batch | undefined }) => {
  const { date } = useCalendar();
  const { retestDue } = drum;
  return (
    <PrintSheet name="tag">
      <section className="drums-tag" aria-label={`Tag of drum ${drum.number}`}>
        <p className="number">{drum.number}</p>
        <dl>
          <Line label="Fuel">{batch?.grade ?? 'grade not known'}</Line>
          <Line label="Batch">{drum.batch ?? 'not known'}</Line>
          <Line label="Filled">{batch === undefined ? 'not known' : date(batch.filledOn)}</Line>
          <Line label="Retest due">{retestDue === null ? 'not known' : date(retestDue)}</Line>
          <Line label="Gross, tare">
            {drum.grossKg === null ? '-' : `${drum.grossKg} kg`},{' '}
            {drum.tareKg === null ? '-' : `${drum.tareKg} kg`}
          </Line>
          <Line label="Opened, by" />
          <Line label="Left, L" />
          <Line label="Left, L" />
        </dl>
      </section>
    </PrintSheet>
  );
};

const Line = ({ label, children }: { readonly label: string; readonly children?: React.ReactNode }) => (
  <div>
    <dt>{label}</dt>
    <dd>{children}</dd>
  </div>
);
