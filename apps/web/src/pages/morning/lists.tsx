import { useState } from 'react';
import { useCalendar } from '../../api/index.js';
import { Button, EmptyLine, figure, inWords, Lines } from '../../ui/index.js';
import type { Morning } from './morning-read.js';
import type { WordsRow } from './not-heard-rows.js';

/** Time, head, and what is to be said of it. */
export const WordsList = ({ rows, empty }: { readonly rows: readonly WordsRow[]; readonly empty: string }) =>
  rows.length === 0 ? (
    <EmptyLine>{empty}</EmptyLine>
  ) : (
    <ol className="morning-rows">
      {rows.map(({ key, time, head, words, grave }) => (
        <li key={key} className="morning-row">
          <span className="time">{time}</span>
          <div>
            <b>{head}</b> {grave && <span className="band">Overdue</span>}
            <p className="said">{words}</p>
          </div>
        </li>
      ))}
    </ol>
  );

export const changedRows = ({ changed }: Morning, when: (at: string) => string): readonly WordsRow[] =>
  changed.map(({ at, writtenAt, what, source }, index) => ({
    key: `${index} ${at}`,
    time: when(at),
    head: what,
    words: `${source}${writtenAt === null ? '' : `, written ${when(writtenAt)}`}`,
  }));

/** Flights of today by what they are worth when only one gets away. */
export const OneWindow = ({ morning }: { readonly morning: Morning }) => {
  const { oneWindow: flights } = morning;
  const asked = new Set(morning.flights.flatMap(({ id, needsDecision }) => (needsDecision ? [id] : [])));
  const { day, today } = useCalendar();
  const [showsAll, setShowsAll] = useState(false);
  if (flights.length === 0) return <EmptyLine>No flight of today is still to go.</EmptyLine>;
  return (
    <>
      <Lines
        caption="If only one window opens today, most harm avoided per hour first"
        captionUnseen
        numbered
        rows={showsAll ? flights : flights.slice(0, first)}
        keyOf={({ flight }) => flight}
        columns={[
          {
            head: 'Flight',
            heads: true,
            cell: ({ flight, drums }) => (
              <>
                <b>{flight}</b>, {inWords(drums, 'drums')}
                {asked.has(flight) && (
                  <>
                    <br />
                    <span className="band">Needs a decision</span>
                  </>
                )}
              </>
            ),
          },
          {
            head: 'Helps',
            cell: ({ flight, protects }) =>
              protects === null
                ? asked.has(flight)
                  ? 'no level as it stands'
                  : 'nothing falls short'
                : `${protects.place}, short ${protects.date === today ? 'today' : day(protects.date)}`,
          },
          {
            head: 'Harm avoided',
            figures: true,
            wide: true,
            cell: ({ harmAvoided }) => `${figure(harmAvoided)} litre-days`,
          },
          { head: 'Block', figures: true, cell: ({ blockHours }) => inWords(blockHours, 'h', 2) },
          { head: 'Weather', figures: true, cell: ({ chance }) => `goes ${Math.round(chance * 100)} in 100` },
        ]}
      />
      {flights.length > first && (
        <Button small onPress={() => setShowsAll(!showsAll)}>
          {showsAll ? `The first ${first}` : `All ${flights.length}`}
        </Button>
      )}
    </>
  );
};

/** As many as a window lets away, more or less. */
const first = 3;
