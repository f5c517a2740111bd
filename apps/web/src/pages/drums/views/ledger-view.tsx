import { useCalendar, useList, useRead, useSettings } from '../../../api/index.js';
import { Button, Choice, EmptyLine, Entry, Lines, Picture } from '../../../ui/index.js';
import type { Address } from '../address.js';
import { type Entered, enteredSchema, pageOf, placeSchema } from '../drums-read.js';
import { drumsOf, ledgerPath } from '../ledger-path.js';
import { sentenceOf, sourceOf } from '../sentences.js';
import { DrumLink } from './drum-link.js';

/** Every entry as it came in, the newest first. Nothing is edited: a correction is another entry. */
export const LedgerView = ({ address }: { readonly address: Address }) => {
  const zone = useSettings().value?.data.timeZone ?? 'UTC';
  const { word, go } = address;
  const read = useRead(ledgerPath(word, zone), pageOf(enteredSchema));
  return (
    <section className="section" aria-label="Ledger">
      <h2>
        Ledger <small>newest first; entries are never changed</small>
      </h2>
      <Filter address={address} />
      <Picture read={read}>
        {({ items, next }) => (
          <>
            {items.length === 0 ? (
              <EmptyLine>No entry is like that. Take a filter away to see more.</EmptyLine>
            ) : (
              <Entries entries={items} address={address} />
            )}
            <div className="drums-acts">
              {next !== null && (
                <Button small onPress={() => go({ after: next })}>
                  Older entries
                </Button>
              )}
              {word('after') !== '' && (
                <Button small onPress={() => go({ after: null })}>
                  Back to the newest
                </Button>
              )}
            </div>
          </>
        )}
      </Picture>
    </section>
  );
};

const Filter = ({ address: { word, go } }: { readonly address: Address }) => {
  const places = useList('/api/places', placeSchema).value ?? [];
  const set = (name: string) => (value: string) => go({ [name]: value, after: null });
  return (
    <div className="drums-row">
      <Choice
        label="Place"
        value={word('place')}
        options={[['', 'every place'], ...places.map(({ data }) => [data.code, data.code] as const)]}
        onChange={set('place')}
      />
      <Entry label="Drum, whole number" value={word('of')} onChange={set('of')} />
      <Entry label="From" value={word('from')} onChange={set('from')} input={{ type: 'date' }} />
      <Entry label="To, that day too" value={word('to')} onChange={set('to')} input={{ type: 'date' }} />
    </div>
  );
};

const Entries = ({
  entries,
  address,
}: {
  readonly entries: readonly Entered[];
  readonly address: Address;
}) => {
  const { when, date, isoDay, time } = useCalendar();
  return (
    <Lines
      caption="Entries of the ledger"
      captionUnseen
      rows={entries}
      keyOf={({ movement }) => movement.id}
      columns={[
        { head: 'Entry', cell: ({ entry }) => entry, figures: true },
        {
          head: 'Happened',
          cell: ({ movement: { happenedAt } }) => (
            <span className="nw">
              {date(isoDay(happenedAt)).replace(/^\S+ /, '')} {time(happenedAt)}
            </span>
          ),
        },
        {
          head: 'Drum',
          cell: ({ movement }) =>
            drumsOf(movement).map((number) => <DrumLink key={number} number={number} go={address.go} />),
        },
        {
          head: 'What, and who says so',
          cell: ({ movement }) => (
            <>
              {sentenceOf(movement)} <small className="drums-source">{sourceOf(movement, when)}</small>
            </>
          ),
        },
      ]}
    />
  );
};
