import { useCalendar } from '../../api/index.js';
import { figure, Lines } from '../../ui/index.js';
import { dayNames } from './cache-words.js';
import { type TouchedRow, touchedRows } from './consequence-rows.js';
import type { Asked } from './use-consequence.js';

/** What a change would do, cache by cache, before it is made. */
export const TouchedCaches = ({ asked }: { readonly asked: Asked }) => {
  const { day } = useCalendar();
  return (
    <div role="status" className="touched">
      {asked.state === 'checking' && <p className="slate">Checking...</p>}
      {asked.state === 'not answered' && <p>{asked.why}</p>}
      {asked.state === 'answered' && <Answer asked={asked} day={day} />}
    </div>
  );
};

interface AnswerProps {
  readonly asked: Extract<Asked, { readonly state: 'answered' }>;
  readonly day: (date: string) => string;
}

const Answer = ({ asked, day }: AnswerProps) => {
  const dayName = dayNames(asked.consequence.dates, day);
  const rows = touchedRows(asked.consequence, dayName);
  if (rows.length === 0) return <p>No cache is touched in these days.</p>;
  return (
    <>
      <Lines<TouchedRow>
        caption="What it does"
        rows={rows}
        keyOf={({ place }) => place}
        columns={[
          { head: 'Cache', heads: true, cell: ({ place }) => place },
          { head: 'Day', cell: (row) => dayName(row.day) },
          {
            head: 'Before',
            figures: true,
            cell: ({ before }) => <span className="was">{figure(before)} L</span>,
          },
          { head: 'After', figures: true, cell: ({ after }) => <b>{figure(after)} L</b> },
        ]}
      />
      {rows.map(({ place, words }) => (
        <p key={place}>
          <b>{place}</b>: {words}
        </p>
      ))}
    </>
  );
};
