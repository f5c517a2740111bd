import { useCalendar, useList } from '../../../api/index.js';
import { EmptyLine, figure, Lines, Picture } from '../../../ui/index.js';
import type { Go } from '../address.js';
import { retestSchema } from '../drums-read.js';
import { retestWords } from '../retest-words.js';
import { DrumLink } from './drum-link.js';

interface RetestViewProps {
  readonly current: string | null;
  readonly go: Go;
}

/** Drums whose retest date comes before the plan has burned them, or is over. */
export const RetestView = ({ current, go }: RetestViewProps) => {
  const read = useList('/api/retest-coming', retestSchema);
  const { date, day } = useCalendar();
  return (
    <Picture read={read}>
      {(drums) =>
        drums.length === 0 ? (
          <>
            <h2>Retest coming</h2>
            <EmptyLine>No drum reaches its retest date within the days looked ahead.</EmptyLine>
          </>
        ) : (
          <>
            {retestWords(drums, date).map((words) => (
              <p key={words} className="drums-note">
                {words}
              </p>
            ))}
            <Lines
              caption="Retest coming"
              rows={drums}
              keyOf={({ number }) => number}
              isCurrent={({ number }) => number === current}
              columns={[
                { head: 'Number', cell: ({ number }) => <DrumLink number={number} go={go} />, heads: true },
                { head: 'Place', cell: ({ place }) => place },
                { head: 'Batch', cell: ({ batch }) => batch },
                {
                  head: 'Retest due',
                  cell: ({ retestDue, isPast }) =>
                    isPast ? <b className="plum">past, {day(retestDue)}</b> : day(retestDue),
                },
                {
                  head: 'Not burned by then',
                  cell: ({ unusedLitres }) => `${figure(unusedLitres)} L`,
                  figures: true,
                },
                {
                  head: 'Draw that comes too late',
                  cell: ({ drawTooLate, flight }) =>
                    flight !== null
                      ? `set aside for ${flight}`
                      : drawTooLate === null
                        ? 'none'
                        : `${day(drawTooLate.date)}, ${drawTooLate.for}`,
                  wide: true,
                },
              ]}
            />
          </>
        )
      }
    </Picture>
  );
};
