import { type Calendar, useCalendar } from '../../../api/index.js';
import { dropLine, type KeptLine, useLines } from '../../../paper/kept-lines.js';
import { waitsFor } from '../../../paper/send-lines.js';
import { Button, EmptyLine, Lines } from '../../../ui/index.js';

/** What was typed here and is not yet in the ledger, or has just gone there. */
export const SheetLines = ({ onChange }: { readonly onChange: (text: string) => void }) => {
  const calendar = useCalendar();
  const lines = useLines();
  if (lines.length === 0) return <EmptyLine>No line waits on this machine.</EmptyLine>;
  return (
    <Lines
      caption="Lines typed here, the oldest first"
      captionUnseen
      numbered
      rows={lines}
      keyOf={({ id }) => id}
      columns={[
        { head: 'Written', cell: ({ writtenAt }) => calendar.when(writtenAt) },
        { head: 'Entered', cell: ({ enteredAt }) => calendar.when(enteredAt) },
        { head: 'What', heads: true, cell: (line) => <What line={line} /> },
        { head: 'By', wide: true, cell: ({ by, means }) => `${by}, ${means}` },
        {
          head: 'Where it is',
          cell: (line) => <State line={line} onChange={onChange} calendar={calendar} />,
        },
      ]}
    />
  );
};

const What = ({ line: { words, says } }: { readonly line: KeptLine }) => (
  <>
    {words}
    {says.map((each) => (
      <small key={each} className="ochre">
        {' '}
        {each}
      </small>
    ))}
  </>
);

interface StateProps {
  readonly line: KeptLine;
  readonly calendar: Calendar;
  readonly onChange: (text: string) => void;
}

const State = ({ line, onChange }: StateProps) => {
  if (line.state === 'with base') return <b className="pine">With base</b>;
  if (line.state === 'kept') {
    const before = waitsFor(line);
    return <>{before === undefined ? 'Kept here' : `Kept here, until "${before.text}" is settled`}</>;
  }
  const take = (text: string) => {
    dropLine(line.id);
    onChange(text);
  };
  return (
    <>
      <b className="plum">Base says no</b>{' '}
      <Button small onPress={() => take(line.text)}>
        Write it again
      </Button>{' '}
      <Button small onPress={() => take('')}>
        Leave it out
      </Button>
    </>
  );
};
