import { useCalendar, useSettings } from '../../../api/index.js';
import { figure, inWords, Lines, stockInWords } from '../../../ui/index.js';
import { dayNames } from '../cache-words.js';
import type { Consequence } from '../caches-read.js';
import { RemedyPanel } from '../side/remedy-panel.js';
import { type TouchedRow, touchedRows } from './consequence-rows.js';
import type { Asked } from './use-consequence.js';

/** What a change would do, cache by cache, before it is made; first what would keep them above their minimums. */
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

/** As the server has it: null for no other reason. */
const whyNotKnown =
  'The recharge follows what fuel is delivered for, and no flight ahead brings drums to one of its places: plan first.';

interface AnswerProps {
  readonly asked: Extract<Asked, { readonly state: 'answered' }>;
  readonly day: (date: string) => string;
}

/** "44.0 h, 4,905 L, recharge 18,700 cr": at what the flights ahead deliver for. */
const foreseenWords = (
  { hours, litres, recharge }: Consequence['programmes'][number]['after'],
  currency: string,
): string => {
  const charged =
    recharge === null ? 'recharge not known' : `recharge ${figure(Math.round(recharge / 100))} ${currency}`;
  return `${inWords(hours, 'h', 1)}, ${inWords(litres, 'L')}, ${charged}`;
};

const Answer = ({ asked, day }: AnswerProps) => {
  const currency = useSettings().value?.data.currency ?? 'cr';
  const dayName = dayNames(asked.consequence.dates, day);
  const rows = touchedRows(asked.consequence, dayName);
  if (rows.length === 0) return <p>No cache is touched in these days.</p>;
  return (
    <>
      {asked.consequence.slingRemedies.map((remedy) => (
        <RemedyPanel key={remedy.place} remedy={remedy} isAfterChange />
      ))}
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
            cell: ({ before }) => <span className="was">{stockInWords(before)}</span>,
          },
          { head: 'After', figures: true, cell: ({ after }) => <b>{stockInWords(after)}</b> },
        ]}
      />
      {rows.map(({ place, words }) => (
        <p key={place}>
          <b>{place}</b>: {words}
        </p>
      ))}
      {asked.consequence.programmes.map(({ before, after }) => (
        <p key={after.programme}>
          <b>
            {after.programme} {after.name}
          </b>
          : {foreseenWords(before, currency)} in these days; then {foreseenWords(after, currency)}.
          {after.recharge === null && ` ${whyNotKnown}`}
        </p>
      ))}
    </>
  );
};
